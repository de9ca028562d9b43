package stillturning.report.explored;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.element.Protector;
import stillturning.report.explored.ExploredFront.ExploredLayout;

/** What layouts have in common, counted kind of part by kind of part. */
final class Families {

    private final ExploredFront explored;

    Families(ExploredFront explored) {
        this.explored = explored;
    }

    /** Layouts with as many of each kind of source and of bus. */
    record Family(String words, List<ExploredLayout> layouts) {
        Family {
            layouts = List.copyOf(layouts);
        }
    }

    /** How many of each kind a layout has; wires, loads, grounds, plugs and protectors apart. */
    Map<PartKind, Integer> counts(ExploredLayout layout) {
        return counts(explored.of(layout).candidate());
    }

    private static Map<PartKind, Integer> counts(Candidate candidate) {
        Map<PartKind, Integer> counts =
                new TreeMap<>(
                        Comparator.comparingInt(PartKind::order).thenComparing(PartKind::word));
        candidate.parts().stream()
                .filter(Families::tells)
                .forEach(part -> counts.merge(part.kind(), 1, Integer::sum));
        return counts;
    }

    private static boolean tells(Part part) {
        return (part.role() == Part.Role.DEVICE || part.role() == Part.Role.BUS)
                && part.elements().stream().noneMatch(Protector.class::isInstance);
    }

    /** What everything on the front has as many of. */
    List<String> common() {
        List<Map<PartKind, Integer>> all = explored.front().stream().map(this::counts).toList();
        List<String> common = new ArrayList<>();
        if (!all.isEmpty()) {
            all.get(0)
                    .forEach(
                            (kind, count) -> {
                                if (all.stream().allMatch(c -> count.equals(c.get(kind)))) {
                                    common.add(counted(kind, count));
                                }
                            });
        }
        return common;
    }

    /** What everything on the front has more of than any drawing that misses a requirement. */
    List<String> telling() {
        List<Map<PartKind, Integer>> refused =
                explored.drawings().stream()
                        .filter(drawing -> !explored.missed(drawing).isEmpty())
                        .map(this::counts)
                        .toList();
        List<Map<PartKind, Integer>> all = explored.front().stream().map(this::counts).toList();
        List<String> telling = new ArrayList<>();
        if (!refused.isEmpty() && !all.isEmpty()) {
            for (PartKind kind : all.get(0).keySet()) {
                int least = all.stream().mapToInt(c -> c.getOrDefault(kind, 0)).min().orElse(0);
                int most = refused.stream().mapToInt(c -> c.getOrDefault(kind, 0)).max().orElse(0);
                if (least > most) {
                    telling.add(
                            "at least "
                                    + counted(kind, least)
                                    + ", the refused drawings at most "
                                    + most);
                }
            }
        }
        return telling;
    }

    /**
     * Inputs of loads that every drawing that meets all requirements feeds and nothing on the front
     * does, in a sentence each.
     */
    List<String> spared() {
        List<ExploredLayout> meeting =
                explored.drawings().stream().filter(d -> explored.missed(d).isEmpty()).toList();
        if (meeting.isEmpty() || explored.front().isEmpty()) {
            return List.of();
        }
        Map<String, String> fed = new LinkedHashMap<>(fed(meeting.get(0)));
        meeting.forEach(drawing -> fed.keySet().retainAll(fed(drawing).keySet()));
        explored.front().forEach(layout -> fed.keySet().removeAll(fed(layout).keySet()));
        return fed.values().stream()
                .map(
                        input ->
                                "Every drawing that meets all of it feeds "
                                        + input
                                        + "; nothing on the front does, and it meets all of it"
                                        + " without.")
                .toList();
    }

    /** Inputs of loads that something is joined to, by their terminal, as people call them. */
    private Map<String, String> fed(ExploredLayout layout) {
        Candidate candidate = explored.of(layout).candidate();
        Set<String> joined = new HashSet<>();
        for (Join join : candidate.joins()) {
            joined.add(join.one().toString());
            joined.add(join.other().toString());
        }
        Map<String, String> fed = new LinkedHashMap<>();
        candidate
                .all(Part.Role.LOAD)
                .forEach(
                        load ->
                                load.inputs().stream()
                                        .filter(input -> joined.contains(load.id() + "." + input))
                                        .forEach(
                                                input ->
                                                        fed.put(
                                                                load.id() + "." + input,
                                                                "input "
                                                                        + input
                                                                        + " of "
                                                                        + called(load))));
        return fed;
    }

    private static String called(Part part) {
        String label = part.tag().label();
        return label.isEmpty() ? part.id().replace('-', ' ') : label;
    }

    /** Groups of the front by their sources and buses, the largest first. */
    List<Family> all() {
        Map<String, List<ExploredLayout>> families = new LinkedHashMap<>();
        explored.front()
                .forEach(
                        layout ->
                                families.computeIfAbsent(frame(layout), f -> new ArrayList<>())
                                        .add(layout));
        return families.entrySet().stream()
                .map(e -> new Family(e.getKey(), e.getValue()))
                .sorted(Comparator.comparingInt((Family f) -> -f.layouts.size()))
                .toList();
    }

    private String frame(ExploredLayout layout) {
        Map<PartKind, Integer> counts =
                new TreeMap<>(
                        Comparator.comparingInt(PartKind::order).thenComparing(PartKind::word));
        explored.of(layout).candidate().parts().stream()
                .filter(
                        part ->
                                part.role() == Part.Role.BUS
                                        || !part.sourceTerminals().isEmpty()
                                        || (part.logics() > 0 && tells(part)))
                .forEach(part -> counts.merge(part.kind(), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(e -> counted(e.getKey(), e.getValue()))
                .collect(Collectors.joining(", "));
    }

    /** What a layout has more and less of than another, kind by kind. */
    List<String> against(ExploredLayout layout, ExploredLayout other) {
        Map<PartKind, Integer> here = counts(layout);
        Map<PartKind, Integer> there = counts(other);
        Map<PartKind, Integer> more =
                new TreeMap<>(
                        Comparator.comparingInt(PartKind::order).thenComparing(PartKind::word));
        here.forEach((kind, count) -> more.merge(kind, count, Integer::sum));
        there.forEach((kind, count) -> more.merge(kind, -count, Integer::sum));
        List<String> words = new ArrayList<>();
        more.forEach(
                (kind, count) -> {
                    if (count != 0) {
                        words.add(
                                counted(kind, Math.abs(count)) + (count > 0 ? " more" : " fewer"));
                    }
                });
        return words;
    }

    private static String counted(PartKind kind, int count) {
        return count + " " + (count == 1 ? kind.name() : kind.plural());
    }
}

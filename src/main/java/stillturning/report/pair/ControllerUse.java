package stillturning.report.pair;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Generator;

/**
 * What one electronic controller does in a candidate, and for what.
 *
 * @param served what hangs on its channels: loads, and alternators by their fields
 * @param byRating what hangs on it, by the rating of the channel (A)
 * @param onByDefault what stays on when its logic is dead or nobody can command it
 * @param switchedInFlight what the pilot switches by it in a procedure or a drill
 * @param shedByItself what it sheds or switches without the pilot
 * @param watched signs that it shows or that watch it, by name
 * @param bypassing loads that the engine needs and that do not hang on it
 */
public record ControllerUse(
        Part controller,
        List<String> served,
        Map<Double, List<String>> byRating,
        List<String> onByDefault,
        List<String> switchedInFlight,
        List<String> shedByItself,
        List<String> watched,
        List<String> bypassing) {

    public ControllerUse {
        served = List.copyOf(served);
        byRating = Map.copyOf(byRating);
        onByDefault = List.copyOf(onByDefault);
        switchedInFlight = List.copyOf(switchedInFlight);
        shedByItself = List.copyOf(shedByItself);
        watched = List.copyOf(watched);
        bypassing = List.copyOf(bypassing);
    }

    /**
     * Every controller of a candidate.
     *
     * @param engineLoads loads that the engine needs, some of them or all
     */
    public static List<ControllerUse> of(Candidate candidate, List<String> engineLoads) {
        return candidate.parts().stream()
                .filter(part -> !channels(part).isEmpty())
                .map(part -> of(candidate, part, engineLoads))
                .toList();
    }

    private static List<Channel> channels(Part part) {
        return part.elements().stream()
                .filter(Channel.class::isInstance)
                .map(Channel.class::cast)
                .toList();
    }

    private static ControllerUse of(Candidate candidate, Part part, List<String> engineLoads) {
        Map<String, Set<String>> byLever = new LinkedHashMap<>();
        Map<Double, List<String>> byRating = new TreeMap<>();
        List<String> served = new ArrayList<>();
        List<String> onByDefault = new ArrayList<>();
        for (Channel channel : channels(part)) {
            Set<String> behind = behind(candidate, new Terminal(part.id(), channel.to()));
            byLever.put(channel.lever(), behind);
            served.addAll(behind);
            if (channel.closedByDefault()) {
                onByDefault.addAll(behind);
            }
            byRating.computeIfAbsent(channel.trip().ratedAmps(), a -> new ArrayList<>())
                    .addAll(behind);
        }
        return new ControllerUse(
                part,
                served,
                byRating,
                onByDefault,
                moved(candidate, byLever, served, Optional.empty()),
                moved(candidate, byLever, served, Optional.of(part.id())),
                watched(candidate, part.id(), served),
                engineLoads.stream().filter(load -> !served.contains(load)).toList());
    }

    /** What a line feeds: followed through whatever carries current on, up to loads and sources. */
    private static Set<String> behind(Candidate candidate, Terminal from) {
        Map<Terminal, Set<Terminal>> joined = joined(candidate);
        Set<String> fed = new LinkedHashSet<>();
        Set<Terminal> seen = new HashSet<>(Set.of(from));
        Deque<Terminal> left = new ArrayDeque<>(joined.getOrDefault(from, Set.of()));
        while (!left.isEmpty()) {
            Terminal at = left.poll();
            if (!seen.add(at) || at.part().equals(from.part())) {
                continue;
            }
            left.addAll(joined.getOrDefault(at, Set.of()));
            Part part = candidate.part(at.part()).orElseThrow();
            if (part.role() == Part.Role.LOAD || isSource(part)) {
                fed.add(part.id());
            } else if (part.role() != Part.Role.GROUND) {
                part.across(at.name()).map(n -> new Terminal(part.id(), n)).ifPresent(left::add);
            }
        }
        return fed;
    }

    private static boolean isSource(Part part) {
        return part.elements().stream().anyMatch(Generator.class::isInstance);
    }

    private static Map<Terminal, Set<Terminal>> joined(Candidate candidate) {
        Map<Terminal, Set<Terminal>> joined = new LinkedHashMap<>();
        for (Join join : candidate.joins()) {
            joined.computeIfAbsent(join.one(), t -> new HashSet<>()).add(join.other());
            joined.computeIfAbsent(join.other(), t -> new HashSet<>()).add(join.one());
        }
        return joined;
    }

    /** What is switched by its channels, by the pilot or by itself. */
    private static List<String> moved(
            Candidate candidate,
            Map<String, Set<String>> byLever,
            List<String> served,
            Optional<String> automatic) {
        Set<String> moved = new LinkedHashSet<>();
        for (Procedure procedure : candidate.cockpit().procedures()) {
            if (procedure.execution().automatic().equals(automatic)) {
                moved.addAll(of(procedure.moves().keySet(), byLever));
                procedure.sheds().stream().filter(served::contains).forEach(moved::add);
            }
        }
        if (automatic.isEmpty()) {
            moved.addAll(of(candidate.cockpit().masterOff().keySet(), byLever));
        }
        return List.copyOf(moved);
    }

    private static List<String> of(Collection<String> levers, Map<String, Set<String>> byLever) {
        return levers.stream()
                .flatMap(lever -> byLever.getOrDefault(lever, Set.of()).stream())
                .toList();
    }

    private static List<String> watched(
            Candidate candidate, String controller, List<String> served) {
        return candidate.cockpit().cues().stream()
                .filter(
                        cue ->
                                cue.shownBy().filter(controller::equals).isPresent()
                                        || cue.sign()
                                                .watchedPart()
                                                .filter(
                                                        part ->
                                                                part.equals(controller)
                                                                        && !served.contains(part))
                                                .isPresent())
                .map(cue -> cue.name())
                .toList();
    }
}

package stillturning.reliability.likelihood;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.reliability.chance.Chance;
import stillturning.reliability.chance.CutUnion;
import stillturning.reliability.chance.Exposure;
import stillturning.reliability.chance.Importance;
import stillturning.reliability.combined.Event;

/** Who has how much of the chance. */
final class Shares {

    private static final Comparator<Share> LARGEST_FIRST =
            Comparator.comparing(
                    Share::importance,
                    Comparator.comparingDouble(Importance::criticality)
                            .thenComparingDouble(Importance::fussellVeselySum)
                            .reversed());

    private final CutUnion union;
    private final List<Event> events;
    private final Exposure exposure;
    private final Set<Integer> counted;

    Shares(CutUnion union, List<Event> events, Exposure exposure) {
        this.union = union;
        this.events = events;
        this.exposure = exposure;
        counted = union.sets().stream().flatMap(List::stream).collect(Collectors.toSet());
    }

    /** Of every part that is in a set, all its failure modes together. */
    List<Share> ofParts() {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int event = 0; event < events.size(); event++) {
            if (events.get(event).kind() == Event.EventKind.FAILURE) {
                String part = events.get(event).failure().hits().get(0).part();
                groups.computeIfAbsent(part, p -> new ArrayList<>()).add(event);
            }
        }
        return of(groups);
    }

    /** Of every other event that is in a set. */
    List<Share> ofCauses() {
        Map<String, List<Integer>> groups = new LinkedHashMap<>();
        for (int event = 0; event < events.size(); event++) {
            if (events.get(event).kind() != Event.EventKind.FAILURE) {
                groups.put(events.get(event).name(), List.of(event));
            }
        }
        return of(groups);
    }

    private List<Share> of(Map<String, List<Integer>> groups) {
        return groups.entrySet().parallelStream()
                .filter(group -> group.getValue().stream().anyMatch(counted::contains))
                .map(group -> share(group.getKey(), group.getValue()))
                .sorted(LARGEST_FIRST)
                .toList();
    }

    private Share share(String name, List<Integer> group) {
        return new Share(name, Chance.importance(union, exposure, group));
    }

    /** Of every set. */
    List<SetShare> ofSets() {
        List<List<Integer>> sets = union.sets();
        double[] each = sets.parallelStream().mapToDouble(this::perFlight).toArray();
        double sum = 0;
        for (double one : each) {
            sum += one;
        }
        double all = sum;
        return IntStream.range(0, each.length)
                .mapToObj(i -> new SetShare(sets.get(i), each[i], all == 0 ? 0 : each[i] / all))
                .sorted(Comparator.comparingDouble(SetShare::perFlight).reversed())
                .toList();
    }

    private double perFlight(List<Integer> set) {
        List<Integer> all = IntStream.range(0, set.size()).boxed().toList();
        CutUnion alone = CutUnion.of(set.size(), List.of(all));
        return Chance.of(alone, exposure.of(set)).average().value();
    }
}

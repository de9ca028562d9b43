package stillturning.report.joint;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Sets that differ only in events which can stand for each other, as one group.
 *
 * <p>Two events can if each makes minimal sets with exactly the same others. So any choice of one
 * event from each class of a group is one of its sets, and all of them are.
 */
final class SetGroups {

    private SetGroups() {}

    /**
     * Sets that are one thing to a reader.
     *
     * @param classes events, any one of each with any one of the others
     * @param sets how many that makes
     * @param chance sum of what each is likely
     */
    record SetGroup(List<List<Integer>> classes, int sets, double chance) {
        SetGroup {
            classes = classes.stream().map(List::copyOf).toList();
        }
    }

    /**
     * The groups, the likeliest first.
     *
     * @param chances of each set, in the order of the sets
     */
    static List<SetGroup> of(List<List<Integer>> sets, List<Double> chances) {
        Map<Integer, Set<List<Integer>>> others = new HashMap<>();
        for (List<Integer> set : sets) {
            for (Integer event : set) {
                others.computeIfAbsent(event, e -> new HashSet<>()).add(without(set, event));
            }
        }
        Map<Set<List<Integer>>, List<Integer>> classes = new HashMap<>();
        others.keySet().stream()
                .sorted()
                .forEach(
                        event ->
                                classes.computeIfAbsent(others.get(event), o -> new ArrayList<>())
                                        .add(event));
        Map<List<List<Integer>>, double[]> groups = new LinkedHashMap<>();
        for (int i = 0; i < sets.size(); i++) {
            List<List<Integer>> group = new ArrayList<>();
            sets.get(i).forEach(event -> group.add(classes.get(others.get(event))));
            group.sort(Comparator.comparing(c -> c.get(0)));
            double[] sum = groups.computeIfAbsent(group, g -> new double[2]);
            sum[0]++;
            sum[1] += chances.get(i);
        }
        List<SetGroup> all = new ArrayList<>();
        groups.forEach((group, sum) -> all.add(new SetGroup(group, (int) sum[0], sum[1])));
        all.sort(Collections.reverseOrder(Comparator.comparingDouble(SetGroup::chance)));
        return List.copyOf(all);
    }

    private static List<Integer> without(List<Integer> set, Integer event) {
        return set.stream().filter(other -> !other.equals(event)).toList();
    }
}

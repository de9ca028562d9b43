package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Events that can stand for each other in every cut set do together what one event would that
 * happens when any of them does. Two twins never share a set: what one then stood beside, the other
 * could not.
 */
final class InterchangeableEvents {
    private final int[][] members;
    private final List<int[]> sets;

    private InterchangeableEvents(int[][] members, List<int[]> sets) {
        this.members = members;
        this.sets = sets;
    }

    /** Events by class of twins, ascending. */
    int[][] members() {
        return members;
    }

    /** The cut sets, told of classes. */
    List<int[]> sets() {
        return sets;
    }

    static InterchangeableEvents of(List<int[]> sets) {
        Map<Integer, Set<List<Integer>>> companies = new LinkedHashMap<>();
        for (int[] set : sets) {
            for (int event : set) {
                companies.computeIfAbsent(event, e -> new HashSet<>()).add(without(event, set));
            }
        }
        Map<Set<List<Integer>>, List<Integer>> classes = new LinkedHashMap<>();
        companies.forEach(
                (event, company) ->
                        classes.computeIfAbsent(company, c -> new ArrayList<>()).add(event));
        int[][] members =
                classes.values().stream()
                        .map(twins -> twins.stream().mapToInt(e -> e).sorted().toArray())
                        .toArray(int[][]::new);
        return new InterchangeableEvents(members, renamed(sets, members));
    }

    private static List<Integer> without(int event, int[] set) {
        return IntStream.of(set).filter(other -> other != event).boxed().toList();
    }

    /** Each set once, since those that differ by twins alone are the same now. */
    private static List<int[]> renamed(List<int[]> sets, int[][] members) {
        Map<Integer, Integer> classOf = new HashMap<>();
        for (int twins = 0; twins < members.length; twins++) {
            for (int event : members[twins]) {
                classOf.put(event, twins);
            }
        }
        List<int[]> renamed = new ArrayList<>();
        Set<List<Integer>> seen = new HashSet<>();
        for (int[] set : sets) {
            int[] classes = IntStream.of(set).map(classOf::get).sorted().toArray();
            if (seen.add(IntStream.of(classes).boxed().toList())) {
                renamed.add(classes);
            }
        }
        return renamed;
    }

    /** Probability that any member happens, by class and then by flight. */
    static double[] any(int[][] members, List<double[]> chances) {
        double[] any = new double[members.length * chances.size()];
        int place = 0;
        for (int[] twins : members) {
            for (double[] flight : chances) {
                double one = 0;
                for (int event : twins) {
                    // 1 - (1 - a)(1 - b), without losing what is small
                    one += flight[event] * (1 - one);
                }
                any[place++] = one;
            }
        }
        return any;
    }
}

package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import stillturning.reliability.chance.Occurrence.Active;
import stillturning.reliability.chance.Occurrence.LatentOccurrence;
import stillturning.reliability.chance.Occurrence.PerFlight;

/** Small families, and the same answers by counting every combination. */
final class Cases {
    static final double HOUR = 3600;

    private Cases() {}

    static Exposure perFlight(double... chances) {
        return Exposure.of(HOUR, DoubleStream.of(chances).mapToObj(Cases::fixed).toList());
    }

    static Exposure even(int events, double chance) {
        return perFlight(DoubleStream.generate(() -> chance).limit(events).toArray());
    }

    static Occurrence fixed(double chance) {
        return new PerFlight(Lognormal.fixed(chance));
    }

    static Active active(double perHour) {
        return new Active(Lognormal.fixed(perHour / HOUR));
    }

    static LatentOccurrence latent(double perHour, double hours) {
        return new LatentOccurrence(Lognormal.fixed(perHour / HOUR), hours * HOUR);
    }

    static double average(CutUnion union, Exposure exposure) {
        return Chance.of(union, exposure).average().value();
    }

    static double average(CutUnion union, Occurrence... occurrences) {
        return average(union, Exposure.of(HOUR, List.of(occurrences)));
    }

    /** The union by the definition: the sum over all combinations in which a set is true. */
    static double counted(List<List<Integer>> sets, double[] chances) {
        double sum = 0;
        for (int happened = 0; happened < 1 << chances.length; happened++) {
            int now = happened;
            if (sets.stream().anyMatch(set -> set.stream().allMatch(e -> (now >> e & 1) == 1))) {
                double chance = 1;
                for (int event = 0; event < chances.length; event++) {
                    chance *= (now >> event & 1) == 1 ? chances[event] : 1 - chances[event];
                }
                sum += chance;
            }
        }
        return sum;
    }

    /** The smallest sets of events that make something true, by trying every one. */
    static List<List<Integer>> minimal(int events, Predicate<Integer> comesTrue) {
        List<List<Integer>> minimal = new ArrayList<>();
        for (int set = 1; set < 1 << events; set++) {
            int now = set;
            if (comesTrue.test(set)
                    && IntStream.range(0, events)
                            .filter(e -> (now >> e & 1) == 1)
                            .noneMatch(e -> comesTrue.test(now & ~(1 << e)))) {
                minimal.add(
                        IntStream.range(0, events)
                                .filter(e -> (now >> e & 1) == 1)
                                .boxed()
                                .toList());
            }
        }
        return minimal;
    }

    /** Minimal edge cuts between vertices 0 and 1 of a graph told as pairs of vertices. */
    static List<List<Integer>> edgeCuts(int[][] edges) {
        return minimal(edges.length, failed -> !joined(edges, failed));
    }

    private static boolean joined(int[][] edges, int failed) {
        long reached = 1;
        for (int round = 0; round < edges.length; round++) {
            for (int e = 0; e < edges.length; e++) {
                if ((failed >> e & 1) == 0) {
                    long ends = 1L << edges[e][0] | 1L << edges[e][1];
                    reached |= (reached & ends) != 0 ? ends : 0;
                }
            }
        }
        return (reached & 2) != 0;
    }
}

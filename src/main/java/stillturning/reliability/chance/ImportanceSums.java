package stillturning.reliability.chance;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;

/**
 * Works out importances from what all of them have in common. Every figure is that of rates at
 * their means, lifted as the sum over its cut sets is lifted by what their rates have in common.
 */
final class ImportanceSums {
    private final CutUnion union;
    private final Flights flights;
    private final Top top;
    private final CutSetSums sums;
    private final Knowledge known;
    private final double all;
    private final double allSum;

    /**
     * @param flights with every rate at its mean
     */
    ImportanceSums(CutUnion union, Flights flights, Knowledge known) {
        this.union = union;
        this.flights = flights;
        this.known = known;
        top = union.top();
        sums = union.sums();
        all = lifted(flights, known);
        allSum = flights.of(chances -> sums.knownSum(chances, known)).average();
    }

    Importance importance(SortedSet<Integer> group) {
        boolean[] marked = new boolean[union.events()];
        group.forEach(event -> marked[event] = true);
        double theirs = flights.of(chances -> sums.knownSum(chances, known, marked)).average();
        return new Importance(
                List.copyOf(group),
                union.basis(),
                all,
                Math.min(1, lifted(with(1, group), known.without(group))),
                lifted(with(0, group), known),
                Importance.share(theirs, allSum),
                union(marked, theirs));
    }

    private double lifted(Flights some, Knowledge left) {
        double plain = some.of(sums::rareEventSum).average();
        double together = some.of(chances -> sums.knownSum(chances, left)).average();
        return some.of(top).average() * (plain == 0 ? 1 : together / plain);
    }

    private Flights with(double chance, SortedSet<Integer> group) {
        return flights.with(
                given -> {
                    double[] changed = given.clone();
                    group.forEach(event -> changed[event] = chance);
                    return changed;
                });
    }

    private OptionalDouble union(boolean[] marked, double theirs) {
        if (union.basis() == Basis.BOUNDED) {
            return OptionalDouble.empty();
        }
        double plain = flights.of(chances -> sums.rareEventSum(chances, marked)).average();
        double lift = plain == 0 ? 1 : theirs / plain;
        return union.touching(marked)
                .map(part -> Importance.share(flights.of(part).average() * lift, all))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}

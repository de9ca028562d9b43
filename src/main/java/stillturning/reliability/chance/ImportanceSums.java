package stillturning.reliability.chance;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;

/** Works out importances from what all of them have in common. */
final class ImportanceSums {
    private final CutUnion union;
    private final Flights flights;
    private final Top top;
    private final CutSetSums sums;
    private final double all;
    private final double allSum;

    ImportanceSums(CutUnion union, Flights flights) {
        this.union = union;
        this.flights = flights;
        top = union.top();
        sums = union.sums();
        all = flights.of(top).average();
        allSum = flights.of(sums::rareEventSum).average();
    }

    Importance importance(SortedSet<Integer> group) {
        boolean[] marked = new boolean[union.events()];
        group.forEach(event -> marked[event] = true);
        double theirs = flights.of(chances -> sums.rareEventSum(chances, marked)).average();
        return new Importance(
                List.copyOf(group),
                union.basis(),
                all,
                with(1, group).of(top).average(),
                with(0, group).of(top).average(),
                Importance.share(theirs, allSum),
                union(marked));
    }

    private Flights with(double chance, SortedSet<Integer> group) {
        return flights.with(
                given -> {
                    double[] changed = given.clone();
                    group.forEach(event -> changed[event] = chance);
                    return changed;
                });
    }

    private OptionalDouble union(boolean[] marked) {
        if (union.basis() == Basis.BOUNDED) {
            return OptionalDouble.empty();
        }
        return union.touching(marked)
                .map(part -> Importance.share(flights.of(part).average(), all))
                .map(OptionalDouble::of)
                .orElse(OptionalDouble.empty());
    }
}

package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.parts.Exchangeable;
import stillturning.parts.Part;
import stillturning.parts.element.Cell;

/** Which battery of one candidate stands for which of another. */
final class BatteryPairs {

    /** Two batteries that stand for each other. */
    record Pair(Part here, Part there) {

        /** Whether one is as good as the other: all but their names and places. */
        boolean alike() {
            return Exchangeable.exchanged(there, here).equals(Optional.of(here));
        }
    }

    private static final Comparator<Part> LARGEST_FIRST =
            Comparator.comparingDouble(BatteryPairs::coulombs).reversed().thenComparing(Part::id);

    private BatteryPairs() {}

    /** By name, then the rest by capacity, as far as they go. */
    static List<Pair> of(Candidate here, Candidate there) {
        List<Part> ours = batteries(here);
        List<Part> theirs = batteries(there);
        List<Pair> pairs = new ArrayList<>();
        for (Part one : List.copyOf(ours)) {
            Optional<Part> same = theirs.stream().filter(b -> b.id().equals(one.id())).findFirst();
            if (same.isPresent()) {
                pairs.add(new Pair(one, same.get()));
                ours.remove(one);
                theirs.remove(same.get());
            }
        }
        for (int i = 0; i < Math.min(ours.size(), theirs.size()); i++) {
            pairs.add(new Pair(ours.get(i), theirs.get(i)));
        }
        return List.copyOf(pairs);
    }

    /** A candidate with the batteries of another in the places of its own. */
    static Candidate given(Candidate here, Candidate there) {
        List<Pair> pairs = of(here, there);
        return here.with(
                part ->
                        pairs.stream()
                                .filter(pair -> pair.here().equals(part))
                                .findFirst()
                                .flatMap(pair -> Exchangeable.exchanged(pair.there(), pair.here()))
                                .orElse(part));
    }

    /** Whether it stores charge in cells. */
    static boolean isBattery(Part part) {
        return part.elements().stream().anyMatch(Cell.class::isInstance);
    }

    private static double coulombs(Part battery) {
        return battery.elements().stream()
                .filter(Cell.class::isInstance)
                .map(Cell.class::cast)
                .mapToDouble(cell -> cell.capacity().coulombs())
                .sum();
    }

    private static List<Part> batteries(Candidate candidate) {
        List<Part> found = new ArrayList<>();
        candidate.parts().stream()
                .filter(BatteryPairs::isBattery)
                .sorted(LARGEST_FIRST)
                .forEach(found::add);
        return found;
    }
}

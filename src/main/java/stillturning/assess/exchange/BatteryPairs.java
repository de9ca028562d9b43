package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.parts.Part;
import stillturning.parts.source.Battery;

/** Which battery of one candidate stands for which of another. */
final class BatteryPairs {

    /** Two batteries that stand for each other. */
    record Pair(Battery here, Battery there) {

        /** Whether one is as good as the other: all but their names and places. */
        boolean alike() {
            return there.inPlaceOf(here).equals(here);
        }
    }

    private static final Comparator<Battery> LARGEST_FIRST =
            Comparator.comparingDouble((Battery b) -> -b.capacity().coulombs())
                    .thenComparing(Battery::id);

    private BatteryPairs() {}

    /** By name, then the rest by capacity, as far as they go. */
    static List<Pair> of(Candidate here, Candidate there) {
        List<Battery> ours = batteries(here);
        List<Battery> theirs = batteries(there);
        List<Pair> pairs = new ArrayList<>();
        for (Battery one : List.copyOf(ours)) {
            Optional<Battery> same =
                    theirs.stream().filter(b -> b.id().equals(one.id())).findFirst();
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

    /** Batteries of a candidate that has more than the other. */
    static List<Battery> unpaired(Candidate here, Candidate there) {
        List<Battery> left = batteries(here);
        of(here, there).forEach(pair -> left.remove(pair.here()));
        return List.copyOf(left);
    }

    /** A candidate with the batteries of another in the places of its own. */
    static Candidate given(Candidate here, Candidate there) {
        List<Pair> pairs = of(here, there);
        return here.with(
                part ->
                        pairs.stream()
                                .filter(pair -> pair.here().equals(part))
                                .findFirst()
                                .<Part>map(pair -> pair.there().inPlaceOf(pair.here()))
                                .orElse(part));
    }

    private static List<Battery> batteries(Candidate candidate) {
        List<Battery> found = new ArrayList<>();
        candidate.parts().stream()
                .filter(Battery.class::isInstance)
                .map(Battery.class::cast)
                .sorted(LARGEST_FIRST)
                .forEach(found::add);
        return found;
    }
}

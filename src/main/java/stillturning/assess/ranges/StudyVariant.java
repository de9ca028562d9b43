package stillturning.assess.ranges;

import java.util.List;
import java.util.Optional;
import stillturning.model.Study;

/** Makes the study with every input somewhere in its range. Asked from any thread. */
@FunctionalInterface
public interface StudyVariant {

    /**
     * The study with its inputs at these places.
     *
     * @param places from 0 for the low end to 1 for the high end of the range, by input
     */
    VariedStudy at(double[] places);

    /**
     * What came of it.
     *
     * @param study with the one candidate in question; absent if it cannot be made
     * @param places where the inputs are in the end, which may differ from what was asked for
     * @param refusal why there is no study; empty if there is one
     */
    record VariedStudy(Optional<Study> study, List<Double> places, String refusal) {
        public VariedStudy {
            places = List.copyOf(places);
        }
    }
}

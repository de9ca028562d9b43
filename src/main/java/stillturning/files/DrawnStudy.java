package stillturning.files;

import java.util.List;
import java.util.Optional;
import stillturning.model.Study;

/**
 * A study with one candidate, its values somewhere in their ranges.
 *
 * @param study absent if no such study can be made
 * @param places where in its range each value is, 0 at its low end to 1 at its high end, in the
 *     order asked for; nearer to the likely value than asked for where a part could not be so
 * @param refusal why there is no study; empty if there is one
 */
public record DrawnStudy(Optional<Study> study, List<Double> places, String refusal) {
    public DrawnStudy {
        places = List.copyOf(places);
    }
}

package stillturning.desktop.viewmodel.breaking;

import java.util.Map;
import java.util.Optional;
import stillturning.model.failure.Failure;

/**
 * Something that can be made to happen in a candidate.
 *
 * @param kind what it is listed under
 * @param part id of the part that fails; empty for what is no single part's failure
 * @param mode how the part fails, or the whole name where it is no part's
 * @param failure what happens at t = 0
 * @param left positions of levers that stood wrongly before the flight already
 */
public record FailureChoice(
        String kind,
        Optional<String> part,
        String mode,
        Failure failure,
        Map<String, String> left) {

    public FailureChoice {
        left = Map.copyOf(left);
    }

    /** Unique in the candidate. */
    public String name() {
        return failure.name();
    }
}

package stillturning.desktop.viewmodel;

import java.util.Optional;
import stillturning.assess.Assessment;

/**
 * What was last found out about the study.
 *
 * @param assessment absent until the first one is done, or where the study cannot be computed
 * @param fingerprint of the texts that it was made from; empty if there is none
 * @param refusal why there is none newer; empty if nothing went wrong
 */
public record Results(Optional<Assessment> assessment, String fingerprint, String refusal) {

    /** Before anything was found out. */
    public static final Results NONE = new Results(Optional.empty(), "", "");
}

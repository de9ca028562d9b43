package stillturning.model.failure;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.parts.FailureMode;

/** What people call the ways in which parts fail. */
public final class FailureWords {

    private static final Map<String, String> ALSO_CALLED =
            Map.of(
                    "chafed to ground", "short to ground",
                    "disconnects itself", "management disconnects");

    private FailureWords() {}

    /** The name of a failure mode, then what else it is called. */
    public static List<String> of(FailureMode mode) {
        return Optional.ofNullable(ALSO_CALLED.get(mode.name()))
                .map(also -> List.of(mode.name(), also))
                .orElse(List.of(mode.name()));
    }
}

package stillturning.model.failure;

import java.util.List;
import java.util.stream.Stream;
import stillturning.parts.FailureMode;

/** What people call the ways in which parts fail. */
public final class FailureWords {

    private FailureWords() {}

    /** The name of a failure mode, then what else it is called. */
    public static List<String> of(FailureMode mode) {
        return Stream.concat(Stream.of(mode.name()), mode.traits().alsoCalled().stream()).toList();
    }
}

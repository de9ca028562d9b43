package stillturning.files;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;

/**
 * How failure modes are called in the files: by their words with hyphens between, {@code
 * pin-2-open}; or all that differ in one number or name together, which is then left out: {@code
 * pin-open}.
 */
final class ModeNames {

    private ModeNames() {}

    /** The name by which a mode is known among these, its full one first. */
    static Optional<String> among(Collection<String> known, FailureMode mode) {
        return of(mode).stream().filter(known::contains).findFirst();
    }

    /** The full names of a part's modes. */
    static List<String> fullOf(Part part) {
        return part.failureModes().stream().map(mode -> of(mode).get(0)).toList();
    }

    private static List<String> of(FailureMode mode) {
        List<String> words = List.of(mode.name().split(" "));
        List<String> names = new ArrayList<>();
        names.add(String.join("-", words));
        for (int i = 0; i < words.size() && words.size() > 1; i++) {
            List<String> rest = new ArrayList<>(words);
            rest.remove(i);
            names.add(String.join("-", rest));
        }
        return names;
    }
}

package stillturning.desktop.viewmodel;

import java.util.Optional;

/**
 * Where in the desktop something is to be seen.
 *
 * @param candidate candidate to open; the one that is open if empty
 * @param subject what to show there: a part in Draw and Size, the name of a failure in Break
 */
public record Destination(AreaName area, Optional<String> candidate, Optional<String> subject) {

    /** An area as it is. */
    public static Destination of(AreaName area) {
        return new Destination(area, Optional.empty(), Optional.empty());
    }

    /** One thing of a candidate in an area. */
    public static Destination of(AreaName area, String candidate, String subject) {
        return new Destination(area, Optional.of(candidate), Optional.of(subject));
    }
}

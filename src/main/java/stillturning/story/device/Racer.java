package stillturning.story.device;

import stillturning.parts.element.curve.Tripping;

/** What grows warm from too much current, and may give way before or after the others. */
public interface Racer {

    String part();

    /**
     * Time from the beginning of its heating to its giving way, if the present current flowed all
     * along.
     *
     * @param edge where in its tolerance it is
     * @return time (s); infinite while it does not heat, and where it never gives way
     */
    double seconds(Tripping edge);
}

package stillturning.yaml;

import java.util.OptionalInt;

/**
 * Characters that nobody sees and that change what others look like: control characters, which move
 * a terminal's cursor or colour it, and direction marks, which show text in another order than it
 * has.
 *
 * @see "Unicode Standard Annex 9, table of explicit directional formatting characters (from
 *     memory)"
 */
final class Invisible {

    private Invisible() {}

    static boolean changesWhatIsShown(int codePoint) {
        return Character.isISOControl(codePoint)
                || codePoint == 0x061c
                || codePoint == 0x200e
                || codePoint == 0x200f
                || (codePoint >= 0x202a && codePoint <= 0x202e)
                || (codePoint >= 0x2066 && codePoint <= 0x2069)
                || codePoint == 0xfeff;
    }

    /** The first in a value that somebody wrote, where a line break and a tab may stand. */
    static OptionalInt firstIn(String value) {
        return value.codePoints()
                .filter(c -> c != '\n' && c != '\t' && changesWhatIsShown(c))
                .findFirst();
    }
}

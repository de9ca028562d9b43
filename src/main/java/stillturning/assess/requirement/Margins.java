package stillturning.assess.requirement;

import java.util.List;
import java.util.Locale;
import stillturning.quantity.Formats;

/** How far from a limit, in words; to be read after what is found. */
final class Margins {

    private Margins() {}

    private static final int NAMED = 3;

    /** The first of what breaks a limit, to be read after how many there are. */
    static String named(List<String> breaking) {
        if (breaking.isEmpty()) {
            return "";
        }
        int left = breaking.size() - NAMED;
        String first = String.join("; ", breaking.subList(0, Math.min(NAMED, breaking.size())));
        return " (" + first + (left > 0 ? "; and " + left + " more" : "") + ")";
    }

    /** Of something that must last (s). */
    static String time(double seconds, double least) {
        if (Double.isInfinite(seconds)) {
            return "without an end against the " + Formats.lasting(least) + " asked";
        }
        return seconds >= least
                ? Formats.lasting(seconds - least) + " to spare"
                : Formats.lasting(least - seconds) + " short";
    }

    /** Of something that must not last (s), to a millisecond. */
    static String interruption(double seconds, double limit) {
        double milliseconds = 1000 * (limit - seconds);
        return milliseconds > 0
                ? String.format(Locale.ROOT, "%.0f ms to spare", milliseconds)
                : String.format(Locale.ROOT, "%.0f ms too long", -milliseconds);
    }

    /** Something quick. */
    static String milliseconds(double seconds) {
        return Math.round(1000 * seconds) + " ms";
    }

    /** Of something of which there may be none. */
    static String none(int found) {
        return found == 0 ? "" : found + " too many";
    }

    /** Of something that must not be more than it may. */
    static String most(double found, double most, int decimals, String unit) {
        double spare = most - found;
        String size = Formats.fixed(Math.abs(spare), decimals) + " " + unit;
        return size + (spare >= 0 ? " to spare" : " too much");
    }
}

package stillturning.story.device;

import java.util.Locale;

/** Numbers in the words of a story. */
public final class EventWords {
    private EventWords() {}

    public static String volts(double volts) {
        double shown = Math.abs(volts) < 0.05 ? 0 : volts; // nobody reads a sign before 0.0
        return String.format(Locale.ROOT, "%.1f V", shown);
    }

    public static String amps(double amps) {
        return String.format(Locale.ROOT, amps < 10 ? "%.1f A" : "%.0f A", amps);
    }

    /** A bare number above 0, to two figures or to the whole. */
    public static String figures(double number) {
        if (number >= 9.95) {
            return String.format(Locale.ROOT, "%.0f", number);
        }
        int places = Math.max(1, 1 - (int) Math.floor(Math.log10(number * 1.005)));
        return String.format(Locale.ROOT, "%." + places + "f", number);
    }

    public static String celsius(double celsius) {
        return String.format(Locale.ROOT, "%.0f °C", celsius);
    }

    /** A lever moved: {@code "main off"}, {@code "pump-2-breaker pulled"}. */
    public static String move(String lever, String position) {
        return lever + " " + position;
    }

    public static String seconds(double seconds) {
        return String.format(Locale.ROOT, "%.1f s", seconds);
    }

    public static String milliseconds(double seconds) {
        return String.format(Locale.ROOT, "%.0f ms", seconds * 1000);
    }
}

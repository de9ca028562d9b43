package stillturning.timeline;

import java.util.Locale;

/** Numbers in the words of a story. */
final class Say {
    private Say() {}

    static String volts(double volts) {
        return String.format(Locale.ROOT, "%.1f V", volts);
    }

    static String amps(double amps) {
        return String.format(Locale.ROOT, amps < 10 ? "%.1f A" : "%.0f A", amps);
    }
}

package stillturning.device;

import java.util.Locale;

/** Numbers in the words of a story. */
public final class Say {
    private Say() {}

    public static String volts(double volts) {
        return String.format(Locale.ROOT, "%.1f V", volts);
    }

    public static String amps(double amps) {
        return String.format(Locale.ROOT, amps < 10 ? "%.1f A" : "%.0f A", amps);
    }
}

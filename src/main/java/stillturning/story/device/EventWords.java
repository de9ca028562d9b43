package stillturning.story.device;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Numbers in the words of a story. */
public final class EventWords {
    private EventWords() {}

    public static String volts(double volts) {
        double shown = Math.abs(volts) < 0.05 ? 0 : volts; // nobody reads a sign before 0.0
        return written(shown, 1) + " V";
    }

    /** A voltage that is not enough: {@code "7.4 V is below its 10.0 V"}. */
    public static String tooLittle(double volts, double leastVolts) {
        return volts(volts) + " is below its " + volts(leastVolts);
    }

    public static String amps(double amps) {
        return written(amps, amps < 10 ? 1 : 0) + " A";
    }

    /** A bare number above 0, to two figures or to the whole. */
    public static String figures(double number) {
        if (number >= 9.95) {
            return written(number, 0);
        }
        int places = Math.max(1, 1 - (int) Math.floor(Math.log10(number * 1.005)));
        return written(number, places);
    }

    public static String celsius(double celsius) {
        return written(celsius, 0) + " °C";
    }

    /** A lever moved: {@code "main off"}, {@code "pump-2-breaker pulled"}. */
    public static String move(String lever, String position) {
        return lever + " " + position;
    }

    public static String seconds(double seconds) {
        return written(seconds, 1) + " s";
    }

    /** As a format writes it, at less cost: an assessment says thousands of them. */
    private static String written(double number, int places) {
        return Double.isFinite(number)
                ? BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP).toPlainString()
                : String.valueOf(number);
    }

    public static String milliseconds(double seconds) {
        return written(seconds * 1000, 0) + " ms";
    }
}

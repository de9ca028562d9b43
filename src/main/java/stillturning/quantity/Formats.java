package stillturning.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import java.util.Locale;

/** SI values as text for people, alike on every machine and in every language setting. */
public final class Formats {

    private static final int USUAL_DIGITS = 3;
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double POUND = 0.45359237;

    private record Prefix(String symbol, int exponent) {}

    private static final List<Prefix> PREFIXES =
            List.of(
                    new Prefix("M", 6),
                    new Prefix("k", 3),
                    new Prefix("", 0),
                    new Prefix("m", -3),
                    new Prefix("u", -6));

    private Formats() {}

    /** A voltage (V) to three digits: {@code 12.3 V}, {@code 85.0 mV}. */
    public static String volts(double volts) {
        return engineering(volts, "V", USUAL_DIGITS);
    }

    /** A current (A) to three digits: {@code 5.50 A}, {@code 120 mA}. */
    public static String amps(double amps) {
        return engineering(amps, "A", USUAL_DIGITS);
    }

    /** A resistance (ohm) to three digits: {@code 12.0 mohm}. */
    public static String ohms(double ohms) {
        return engineering(ohms, "ohm", USUAL_DIGITS);
    }

    /** A power (W) to three digits: {@code 1.20 kW}. */
    public static String watts(double watts) {
        return engineering(watts, "W", USUAL_DIGITS);
    }

    /** A charge (C) in ampere-hours to three digits: {@code 20.0 Ah}. */
    public static String ampHours(double coulombs) {
        return significant(coulombs / 3600, USUAL_DIGITS) + " Ah";
    }

    /** A fraction in per cent without decimals: 0.8 is {@code 80 %}. */
    public static String percent(double fraction) {
        return fixed(fraction * 100, 0) + " %";
    }

    /** A temperature (°C) without decimals: {@code 35 °C}. */
    public static String celsius(double celsius) {
        return fixed(celsius, 0) + " °C";
    }

    /**
     * A value with a prefix from micro to mega, so that one to three digits stand before the point.
     *
     * @param digits significant digits, at least 3
     */
    public static String engineering(double value, String unit, int digits) {
        if (!Double.isFinite(value) || value == 0) {
            return significant(value, digits) + " " + unit;
        }
        BigDecimal rounded = new BigDecimal(value).round(new MathContext(digits));
        int magnitude = rounded.precision() - rounded.scale() - 1;
        Prefix prefix =
                PREFIXES.stream()
                        .filter(p -> p.exponent() <= magnitude)
                        .findFirst()
                        .orElse(PREFIXES.get(PREFIXES.size() - 1));
        double scaled = rounded.movePointLeft(prefix.exponent()).doubleValue();
        return significant(scaled, digits) + " " + prefix.symbol() + unit;
    }

    /**
     * A time (s) in words: {@code 85 ms}, {@code 2.4 s}, {@code 4 min 20 s}, {@code 41 min}, {@code
     * 1 h 12 min}.
     */
    public static String duration(double seconds) {
        if (!Double.isFinite(seconds) || seconds < 0) {
            return significant(seconds, USUAL_DIGITS) + " s";
        }
        if (seconds < 0.9995) {
            return seconds < 0.00995
                    ? fixed(seconds * 1e3, 1) + " ms"
                    : fixed(seconds * 1e3, 0) + " ms";
        }
        if (seconds < 59.5) {
            return fixed(seconds, seconds < 9.95 ? 1 : 0) + " s";
        }
        if (seconds < 599.5) {
            return two(Math.round(seconds), 60, "min", "s");
        }
        long minutes = Math.round(seconds / 60);
        return minutes < 60 ? minutes + " min" : two(minutes, 60, "h", "min");
    }

    /**
     * How long something lasts (s), in the words of {@link #duration} but never more than it does:
     * 2153 s are {@code 35 min}.
     */
    public static String lasting(double seconds) {
        return duration(lastingSeconds(seconds));
    }

    /**
     * The time (s) that {@link #lasting} shows; rows are put in order by it, since a reader cannot
     * see an order of digits that are not printed.
     */
    public static double lastingSeconds(double seconds) {
        if (!Double.isFinite(seconds) || seconds < 0) {
            return seconds;
        }
        BigDecimal step = new BigDecimal(shownStep(seconds));
        // by way of the shortest decimal text, so that 0.3 s stay 300 ms
        BigDecimal steps = new BigDecimal(Double.toString(seconds)).divideToIntegralValue(step);
        return steps.multiply(step).doubleValue();
    }

    /** The last digit that a duration shows (s). */
    private static String shownStep(double seconds) {
        if (seconds < 1) {
            return seconds < 0.01 ? "0.0001" : "0.001";
        }
        if (seconds < 600) {
            return seconds < 10 ? "0.1" : "1";
        }
        return "60";
    }

    private static String two(long total, long ratio, String large, String small) {
        String whole = total / ratio + " " + large;
        return total % ratio == 0 ? whole : whole + " " + total % ratio + " " + small;
    }

    /** A length (m): {@code 0.90 m} or {@code 85 mm}; {@code 2.95 ft} or {@code 4.5 in}. */
    public static String length(double metres, UnitSystem system) {
        if (system == UnitSystem.METRIC) {
            return Math.abs(metres) < 0.0995
                    ? fixed(metres * 1e3, 0) + " mm"
                    : fixed(metres, 2) + " m";
        }
        return Math.abs(metres) < FOOT
                ? fixed(metres / INCH, 1) + " in"
                : fixed(metres / FOOT, 2) + " ft";
    }

    /** A mass (kg): {@code 2.10 kg} or {@code 85 g}; {@code 4.63 lb}. */
    public static String mass(double kilograms, UnitSystem system) {
        if (system == UnitSystem.US) {
            return fixed(kilograms / POUND, 2) + " lb";
        }
        return Math.abs(kilograms) < 0.0995
                ? fixed(kilograms * 1e3, 0) + " g"
                : fixed(kilograms, 2) + " kg";
    }

    /** A plain number with a fixed count of decimals, half rounded up, never "-0". */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            return String.format(Locale.ROOT, "%s", value);
        }
        // by way of the shortest decimal text: 2.675 rounds to 2.68 as its reader expects
        BigDecimal rounded =
                new BigDecimal(Double.toString(value)).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /** How many there are, with a comma between thousands. */
    public static String count(long number) {
        return String.format(Locale.ROOT, "%,d", number);
    }

    /**
     * Plain numbers for one column: all with the same count of decimals, as few as they need.
     *
     * @param most decimals at most
     */
    public static List<String> alike(List<Double> values, int most) {
        int decimals =
                values.stream()
                        .filter(Double::isFinite)
                        .map(value -> new BigDecimal(fixed(value, most)).stripTrailingZeros())
                        .mapToInt(value -> Math.max(0, value.scale()))
                        .max()
                        .orElse(0);
        return values.stream().map(value -> fixed(value, decimals)).toList();
    }

    /** A plain number with a count of significant digits, never in exponent form. */
    public static String significant(double value, int digits) {
        if (!Double.isFinite(value) || value == 0) {
            return fixed(value, 0);
        }
        BigDecimal rounded = new BigDecimal(Double.toString(value)).round(new MathContext(digits));
        int decimals = digits - (rounded.precision() - rounded.scale());
        return rounded.setScale(Math.max(0, decimals), RoundingMode.HALF_UP).toPlainString();
    }
}

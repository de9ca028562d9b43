package stillturning.quantity;

import static java.util.Objects.requireNonNull;
import static stillturning.quantity.Dimension.AREA;
import static stillturning.quantity.Dimension.CAPACITANCE;
import static stillturning.quantity.Dimension.CHARGE;
import static stillturning.quantity.Dimension.CURRENT;
import static stillturning.quantity.Dimension.ENERGY;
import static stillturning.quantity.Dimension.LENGTH;
import static stillturning.quantity.Dimension.LET_THROUGH;
import static stillturning.quantity.Dimension.MASS;
import static stillturning.quantity.Dimension.POWER;
import static stillturning.quantity.Dimension.RATE;
import static stillturning.quantity.Dimension.RATIO;
import static stillturning.quantity.Dimension.RESISTANCE;
import static stillturning.quantity.Dimension.ROTATION;
import static stillturning.quantity.Dimension.TEMPERATURE;
import static stillturning.quantity.Dimension.TIME;
import static stillturning.quantity.Dimension.VOLTAGE;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Every unit that may be written, with its exact factor.
 *
 * @see "SI Brochure, 9th edition, tables 7 and 8 (prefixes, min, h, °C); international yard and
 *     pound agreement of 1959: 1 yd = 0.9144 m, 1 lb = 0.45359237 kg, so 1 ft = 0.3048 m, 1 in =
 *     0.0254 m, 1 oz = 1/16 lb; circular mil: area of a circle of 0.001 in diameter (all from
 *     memory)"
 */
final class UnitTable {

    static final String NUMBER = "[+-]?[0-9]+(\\.[0-9]+)?([eE][+-]?[0-9]+)?";

    private static final Map<String, WrittenUnit> UNITS = new LinkedHashMap<>();

    /** What people write instead of the symbol; never accepted, only answered. */
    private static final Map<String, String> MEANT = new LinkedHashMap<>();

    private static final Set<String> METRIC =
            Set.of("m", "mm", "cm", "km", "kg", "g", "°C", "degC");
    private static final Set<String> IMPERIAL = Set.of("ft", "in", "lb", "oz", "°F", "degF");

    // pi/4 x (0.0000254 m)^2; pi to 30 digits, far beyond a double
    private static final String CIRCULAR_MIL =
            new BigDecimal("3.14159265358979323846264338328")
                    .divide(new BigDecimal(4))
                    .multiply(new BigDecimal("0.0000254").pow(2))
                    .toString();

    static {
        scaled(VOLTAGE, "V", "1", "mV", "1e-3", "kV", "1e3");
        scaled(CURRENT, "A", "1", "mA", "1e-3", "uA", "1e-6", "kA", "1e3");
        scaled(
                RESISTANCE,
                "mohm",
                "1e-3",
                "ohm",
                "1",
                "uohm",
                "1e-6",
                "kohm",
                "1e3",
                "Mohm",
                "1e6");
        scaled(CAPACITANCE, "F", "1", "mF", "1e-3", "uF", "1e-6");
        scaled(CHARGE, "Ah", "3600", "mAh", "3.6", "C", "1");
        scaled(ENERGY, "Wh", "3600", "kWh", "3600000", "J", "1", "kJ", "1e3");
        scaled(POWER, "W", "1", "mW", "1e-3", "kW", "1e3");
        scaled(LENGTH, "m", "1", "mm", "1e-3", "cm", "1e-2", "km", "1e3");
        scaled(LENGTH, "ft", "0.3048", "in", "0.0254");
        scaled(AREA, "mm2", "1e-6", "cm2", "1e-4", "m2", "1", "cmil", CIRCULAR_MIL);
        scaled(MASS, "kg", "1", "g", "1e-3", "lb", "0.45359237", "oz", "0.028349523125");
        scaled(TIME, "s", "1", "ms", "1e-3", "us", "1e-6", "min", "60", "h", "3600");
        scaled(TEMPERATURE, "°C", "1");
        add("°F", TEMPERATURE, "-32", "5", "9");
        add("K", TEMPERATURE, "-273.15", "1", "1");
        scaled(RATIO, "%", "1e-2");
        add("/h", RATE, "0", "1", "3600");
        scaled(RATE, "/s", "1");
        scaled(ROTATION, "rpm", "1");
        scaled(LET_THROUGH, "A2s", "1");
    }

    // Greek capital omega and the ohm sign look alike, as do the micro sign and Greek mu
    static {
        also("uA", "\u00b5A", "\u03bcA");
        also("ohm", "\u03a9", "\u2126");
        also("mohm", "m\u03a9", "m\u2126");
        also("uohm", "\u00b5\u03a9", "\u00b5\u2126", "\u03bc\u03a9", "\u03bc\u2126");
        also("uohm", "\u00b5ohm", "\u03bcohm");
        also("kohm", "k\u03a9", "k\u2126");
        also("Mohm", "M\u03a9", "M\u2126");
        also("uF", "\u00b5F", "\u03bcF");
        also("mm2", "mm²");
        also("cm2", "cm²");
        also("m2", "m²");
        also("us", "\u00b5s", "\u03bcs");
        also("°C", "degC");
        also("°F", "degF");
        also("/h", "per hour");
        also("A2s", "A²s");
    }

    static {
        meant("V", "volt", "volts");
        meant("A", "amp", "amps", "ampere", "amperes");
        meant("mA", "milliamp", "milliamps");
        meant("ohm", "ohms", "R");
        meant("mohm", "milliohm", "milliohms", "mohms");
        meant("F", "farad", "farads");
        meant("W", "watt", "watts");
        meant("m", "metre", "metres", "meter", "meters");
        meant("ft", "foot", "feet", "'");
        meant("in", "inch", "inches", "\"");
        meant("mm2", "sqmm", "mm^2", "qmm");
        meant("kg", "kgs", "kilo", "kilos");
        meant("g", "gram", "grams", "gr");
        meant("lb", "lbs", "pound", "pounds");
        meant("oz", "ounce", "ounces");
        meant("s", "sec", "secs", "second", "seconds");
        meant("min", "mins", "minute", "minutes");
        meant("h", "hr", "hrs", "hour", "hours");
        meant("°C", "deg C", "celsius", "deg", "°");
        meant("°F", "F", "deg F", "fahrenheit");
        meant("%", "percent", "pct");
        meant("/h", "1/h", "h-1", "per h", "/hour", "/hr");
        meant("rpm", "1/min", "/min", "rev/min", "r/min");
        meant("A2s", "A^2s", "A²·s");
    }

    private UnitTable() {}

    static Optional<WrittenUnit> find(String symbol) {
        return Optional.ofNullable(UNITS.get(symbol));
    }

    /**
     * The unit that somebody who wrote {@code text} probably had in mind, in {@code wanted} if
     * there is one.
     */
    static Optional<String> meantBy(String text, Optional<Dimension> wanted) {
        boolean degrees = wanted.filter(TEMPERATURE::equals).isPresent();
        if (degrees && (text.equals("C") || text.equals("F"))) {
            return Optional.of("°" + text);
        }
        String bare = text.replace(" ", "");
        List<String> close = new ArrayList<>();
        for (WrittenUnit unit : UNITS.values()) {
            if (unit.symbol().equalsIgnoreCase(bare)) {
                close.add(unit.symbol());
            }
        }
        MEANT.forEach(
                (written, symbol) -> {
                    if (written.equalsIgnoreCase(text)) {
                        close.add(symbol);
                    }
                });
        return close.stream()
                .filter(s -> wanted.isEmpty() || wanted.equals(find(s).map(WrittenUnit::dimension)))
                .findFirst()
                .or(() -> close.stream().findFirst());
    }

    /** The unit in which a system shows a quantity that is written in one of the other system. */
    static Optional<WrittenUnit> shownIn(UnitSystem system, Quantity quantity) {
        boolean us = system == UnitSystem.US;
        String written = quantity.written().strip().replaceFirst("^" + NUMBER + " *", "");
        boolean other =
                find(written)
                        .filter(
                                u ->
                                        us
                                                ? METRIC.contains(u.symbol())
                                                : IMPERIAL.contains(u.symbol()))
                        .isPresent();
        if (!other) {
            return Optional.empty();
        }
        double size = Math.abs(quantity.si());
        return switch (quantity.dimension()) {
            case LENGTH -> find(us ? (size < 0.3048 ? "in" : "ft") : size < 0.1 ? "mm" : "m");
            case MASS -> find(us ? (size < 0.1 ? "oz" : "lb") : size < 0.1 ? "g" : "kg");
            case TEMPERATURE -> find(us ? "°F" : "°C");
            case VOLTAGE,
                    CURRENT,
                    RESISTANCE,
                    CAPACITANCE,
                    CHARGE,
                    ENERGY,
                    POWER,
                    AREA,
                    TIME,
                    RATIO,
                    RATE,
                    ROTATION,
                    LET_THROUGH ->
                    Optional.empty();
        };
    }

    static List<String> symbolsOf(Dimension dimension) {
        return UNITS.values().stream()
                .filter(u -> u.dimension() == dimension)
                .map(WrittenUnit::symbol)
                .toList();
    }

    static List<String> namedIn(Dimension dimension) {
        return UNITS.values().stream()
                .filter(u -> u.dimension() == dimension && u.named())
                .map(WrittenUnit::symbol)
                .toList();
    }

    static String patternOf(Dimension dimension) {
        return " *" + NUMBER + " *(" + String.join("|", symbolsOf(dimension)) + ") *";
    }

    private static void scaled(Dimension dimension, String... symbolsAndFactors) {
        for (int i = 0; i < symbolsAndFactors.length; i += 2) {
            add(symbolsAndFactors[i], dimension, "0", symbolsAndFactors[i + 1], "1");
        }
    }

    private static void add(
            String symbol,
            Dimension dimension,
            String offset,
            String numerator,
            String denominator) {
        WrittenUnit unit =
                new WrittenUnit(
                        symbol,
                        dimension,
                        new BigDecimal(offset),
                        new BigDecimal(numerator),
                        new BigDecimal(denominator),
                        true);
        UNITS.put(symbol, unit);
    }

    private static void also(String symbol, String... spellings) {
        WrittenUnit unit = requireNonNull(UNITS.get(symbol));
        for (String spelling : spellings) {
            UNITS.put(spelling, unit.spelt(spelling));
        }
    }

    private static void meant(String symbol, String... written) {
        for (String text : written) {
            MEANT.put(text, symbol);
        }
    }
}

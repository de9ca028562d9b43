package stillturning.quantity;

import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * How far off a quantity may be, to either side: {@code 10 %} of it, or an amount such as {@code 1
 * Ah}. Of a ratio, per cent are percentage points; of a temperature, kelvins.
 *
 * @param si half the width in the unit that the quantity's dimension counts in, above 0
 * @param written the text it came from
 */
public record Spread(double si, String written) {

    /** What stands between a quantity and its spread. */
    public static final Pattern SIGN = Pattern.compile("±|\\+/-|\\+-");

    private static final Pattern KELVINS =
            Pattern.compile(" *(" + UnitTable.NUMBER + ") *(K|°C) *");

    public Spread {
        if (!(si > 0 && Double.isFinite(si))) {
            throw new IllegalArgumentException(
                    "spread " + si + " (\"" + written + "\") is not above 0");
        }
    }

    /**
     * Reads the spread of a quantity.
     *
     * @throws MalformedQuantity if the text is no share and no amount of that dimension, or not
     *     above 0
     */
    public static Spread parse(String text, Quantity around) throws MalformedQuantity {
        double si = halfWidth(text, around);
        if (!(si > 0)) {
            throw new MalformedQuantity(
                    0, "a range of " + text.strip() + " is none", "write more, or leave it out");
        }
        return new Spread(si, text.strip());
    }

    /** The same with its unit as a system has it, rounded for showing; shares and kelvins stay. */
    public Spread in(UnitSystem system, Quantity around) {
        if (around.dimension() == Dimension.TEMPERATURE || written.endsWith("%")) {
            return this;
        }
        Quantity shown = new Quantity(si, around.dimension(), written).in(system);
        return new Spread(shown.si(), shown.written());
    }

    private static double halfWidth(String text, Quantity around) throws MalformedQuantity {
        if (around.dimension() == Dimension.TEMPERATURE) {
            return kelvins(text);
        }
        boolean share = text.strip().endsWith("%");
        if (!share || around.dimension() == Dimension.RATIO) {
            return Quantity.parse(text, around.dimension()).si();
        }
        return Quantity.parse(text, Dimension.RATIO).si() * Math.abs(around.si());
    }

    private static double kelvins(String text) throws MalformedQuantity {
        Matcher kelvins = KELVINS.matcher(text);
        if (!kelvins.matches()) {
            throw new MalformedQuantity(
                    0,
                    "\"" + text.strip() + "\" is no range of a temperature",
                    "write it in kelvins, such as 5 K");
        }
        double half = Double.parseDouble(kelvins.group(1).toLowerCase(Locale.ROOT));
        if (!Double.isFinite(half)) {
            throw new MalformedQuantity(
                    0,
                    kelvins.group(1) + " is beyond what the program can count",
                    "write it in kelvins, such as 5 K");
        }
        return half;
    }

    /**
     * Regular expression (common to Java and ECMAScript) for the sign and the spread of such a
     * quantity or nothing, without anchors.
     */
    public static String pattern(Dimension dimension) {
        String share = "|" + UnitTable.NUMBER + " *%";
        String units = String.join("|", dimension.units());
        String amount = UnitTable.NUMBER + " *(" + units + ")";
        if (dimension == Dimension.TEMPERATURE) {
            amount = UnitTable.NUMBER + " *(K|°C)";
        } else if (dimension != Dimension.RATIO) {
            amount += share;
        }
        return "((±|\\+/-|\\+-) *(" + amount + ") *)?";
    }
}

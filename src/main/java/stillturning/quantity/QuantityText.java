package stillturning.quantity;

import java.math.BigDecimal;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads one text as a number followed by a unit, and explains what it does not accept. */
final class QuantityText {

    private static final Pattern NUMBER = Pattern.compile(UnitTable.NUMBER);
    private static final int LONGEST = 80;
    private static final int LARGEST_EXPONENT = 999;

    private final String text;
    private final Optional<Dimension> wanted;

    QuantityText(String text, Optional<Dimension> wanted) {
        this.text = text;
        this.wanted = wanted;
    }

    Quantity read() throws MalformedQuantity {
        if (text.length() > LONGEST) {
            throw wrong(0, "a text of " + text.length() + " characters is no quantity", example());
        }
        int start = afterSpaces(0);
        Matcher number = NUMBER.matcher(text).region(start, text.length());
        if (!number.lookingAt()) {
            throw noNumber(start);
        }
        int unitAt = afterSpaces(number.end());
        String symbol = withoutTrailingSpaces(text.substring(unitAt));
        WrittenUnit unit = unit(number.group(), symbol, unitAt);
        return new Quantity(value(number.group(), unit, start), unit.dimension(), text);
    }

    private WrittenUnit unit(String number, String symbol, int at) throws MalformedQuantity {
        if (symbol.isEmpty()) {
            throw wrong(text.length(), "\"" + text.strip() + "\" has no unit", unitAdded(number));
        }
        WrittenUnit unit = UnitTable.find(symbol).orElse(null);
        if (unit == null) {
            throw unknownUnit(number, symbol, at);
        }
        if (wanted.isPresent() && wanted.get() != unit.dimension()) {
            String meant =
                    UnitTable.meantBy(symbol, wanted)
                            .filter(s -> !s.equals(symbol))
                            .map(s -> "did you mean " + s + "? ")
                            .orElse("");
            throw wrong(
                    at,
                    "\"" + text.strip() + "\" is " + unit.dimension().words(),
                    meant + wantedUnits(wanted.get()));
        }
        return unit;
    }

    private double value(String number, WrittenUnit unit, int at) throws MalformedQuantity {
        int e = number.toLowerCase(Locale.ROOT).indexOf('e');
        if (e >= 0
                && (number.length() - e > 6
                        || Math.abs(Integer.parseInt(number.substring(e + 1)))
                                > LARGEST_EXPONENT)) {
            throw outOfRange(number, at);
        }
        BigDecimal written = new BigDecimal(number);
        double inside = unit.inside(written);
        boolean vanished = inside == 0 && unit.offset().signum() == 0 && written.signum() != 0;
        if (!Double.isFinite(inside) || vanished) {
            throw outOfRange(number, at);
        }
        Dimension dimension = unit.dimension();
        if (!dimension.holds(inside)) {
            throw wrong(
                    at,
                    "no light aircraft has " + dimension.words() + " of " + text.strip(),
                    "write one " + dimension.range());
        }
        return inside;
    }

    private MalformedQuantity outOfRange(String number, int at) {
        return wrong(at, number + " is beyond what the program can count", example());
    }

    private MalformedQuantity noNumber(int at) {
        String rest = text.substring(at).strip();
        if (rest.isEmpty()) {
            return wrong(at, "nothing is written", example());
        }
        char first = rest.charAt(0);
        if (first == '.') {
            return wrong(at, "the number starts with a point", "write 0" + rest);
        }
        if (first == '\u2212' || first == '\u2013') {
            return wrong(at, "the minus sign is a dash", "write -" + rest.substring(1).strip());
        }
        return wrong(at, "\"" + rest + "\" does not start with a number", example());
    }

    private MalformedQuantity unknownUnit(String number, String symbol, int at) {
        char first = symbol.charAt(0);
        if (first == ',' && symbol.matches(",[0-9]+.*")) {
            String rest = symbol.substring(1).replaceAll("(?<=[0-9]),(?=[0-9])", ".");
            return wrong(at, "the number has a comma", "write " + number + "." + rest);
        }
        if (first == '.') {
            return wrong(
                    at,
                    "no digits follow the point",
                    "write " + number + " " + symbol.substring(1).strip());
        }
        if (Character.isSpaceChar(first)) {
            return wrong(
                    at,
                    String.format(Locale.ROOT, "the gap is the character U+%04X", (int) first),
                    "put an ordinary space");
        }
        Matcher range = Spread.SIGN.matcher(symbol);
        if (range.find()) {
            return wrong(
                    at + range.start(),
                    "\"" + symbol.substring(range.start()) + "\" is a range, and none belongs here",
                    "write the value alone");
        }
        Optional<String> meant = UnitTable.meantBy(symbol, wanted);
        String units =
                wanted.map(QuantityText::wantedUnits)
                        .orElse("write a unit such as V, A, ohm, Ah, W, m, mm2, kg, s, °C, %");
        return wrong(
                at,
                "\"" + symbol + "\" is no unit",
                meant.map(s -> "did you mean " + s + "? ").orElse("") + units);
    }

    private static String wantedUnits(Dimension dimension) {
        return dimension.words() + " is written in " + dimension.choices();
    }

    private String unitAdded(String number) {
        if (wanted.filter(Dimension.RATIO::equals).isPresent() && number.matches("0\\.[0-9]+|1")) {
            BigDecimal percent = new BigDecimal(number).movePointRight(2).stripTrailingZeros();
            return "write " + percent.toPlainString() + " %";
        }
        return "add a unit: " + number + " " + wanted.orElse(Dimension.CURRENT).customary();
    }

    private String example() {
        return "write a number and a unit, such as "
                + wanted.orElse(Dimension.CURRENT).example().written();
    }

    private int afterSpaces(int from) {
        int at = from;
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
        return at;
    }

    private static String withoutTrailingSpaces(String symbol) {
        int end = symbol.length();
        while (end > 0 && symbol.charAt(end - 1) == ' ') {
            end--;
        }
        return symbol.substring(0, end);
    }

    private static MalformedQuantity wrong(int offset, String wrong, String right) {
        return new MalformedQuantity(offset, wrong, right);
    }
}

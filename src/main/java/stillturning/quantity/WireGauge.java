package stillturning.quantity;

import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Size of a conductor, by American wire gauge or by metric area; ordered from thin to thick.
 *
 * @param squareMetres cross-section of the metal (m2)
 * @param name as it is written: {@code AWG 2/0}, {@code 4 mm2}
 * @see "ASTM B258: d(n) = 0.127 mm x 92^((36 - n) / 39) (read in a second source)"
 */
public record WireGauge(double squareMetres, String name) implements Comparable<WireGauge> {

    /**
     * Regular expression (common to Java and ECMAScript) for the text of a gauge, without anchors.
     */
    public static final String PATTERN =
            " *([Aa][Ww][Gg] ?([0-9]{1,2}|[1-4]/0|000|0000)|([0-9]{1,2}|[1-4]/0|000|0000) ?[Aa][Ww][Gg]) *|"
                    + Dimension.AREA.pattern();

    private static final Pattern AWG =
            Pattern.compile("[Aa][Ww][Gg](?<after>.*)|(?<before>[0-9/]+) *[Aa][Ww][Gg]");
    private static final String CHOICES =
            "write AWG 22, 20, 18 ... 2, 1, 1/0 ... 4/0 or an area such as 4 mm2";
    private static final int THINNEST = 30;
    private static final int THICKEST = -3;
    private static final double SMALLEST_MM2 = 0.05;
    private static final double LARGEST_MM2 = 150;

    public WireGauge {
        if (!(squareMetres > 0) || squareMetres == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("wire area " + squareMetres + " m2 is not above 0");
        }
    }

    /**
     * Reads {@code AWG 16}, {@code AWG 2/0} (also {@code 00}), {@code 4 mm2} or {@code 2583 cmil}.
     *
     * @throws MalformedQuantity if the text is no gauge from AWG 30 to 4/0 and no area from 0.05 to
     *     150 mm2
     */
    public static WireGauge parse(String text) throws MalformedQuantity {
        String bare = text.strip();
        Matcher awg = AWG.matcher(bare);
        if (awg.matches()) {
            String size = awg.group("after") != null ? awg.group("after") : awg.group("before");
            return awgSized(size.strip(), bare);
        }
        if (bare.matches("#?[0-9]{1,4}(/0)?")) {
            throw malformed(
                    bare,
                    "has no unit",
                    "write AWG " + bare.replace("#", "") + " or an area such as 4 mm2");
        }
        Quantity area = Quantity.parse(text, Dimension.AREA);
        double squareMillimetres = area.si() * 1e6;
        if (!(squareMillimetres >= SMALLEST_MM2 && squareMillimetres <= LARGEST_MM2)) {
            throw malformed(bare, "is outside the range of wires", "write 0.05 mm2 to 150 mm2");
        }
        return new WireGauge(area.si(), bare.replace("²", "2"));
    }

    private static WireGauge awgSized(String size, String bare) throws MalformedQuantity {
        if (!size.matches("[0-9]{1,2}|[1-4]/0|000|0000")) {
            throw malformed(bare, "is no wire gauge", CHOICES);
        }
        int number;
        if (size.endsWith("/0")) {
            number = 1 - Character.digit(size.charAt(0), 10);
        } else if (size.matches("0+")) {
            number = 1 - size.length();
        } else {
            number = Integer.parseInt(size);
        }
        if (number > THINNEST) {
            throw malformed(bare, "is no wire gauge", CHOICES);
        }
        return awg(number);
    }

    private static MalformedQuantity malformed(String text, String wrong, String right) {
        String shown = text.length() > 40 ? text.substring(0, 40) + "..." : text;
        return new MalformedQuantity(0, "\"" + shown + "\" " + wrong, right);
    }

    /**
     * The gauge of a number.
     *
     * @param number 30 down to -3; 0 is 1/0, -1 is 2/0, -3 is 4/0
     */
    public static WireGauge awg(int number) {
        if (number > THINNEST || number < THICKEST) {
            throw new IllegalArgumentException("AWG number " + number + " is not in 30 .. -3");
        }
        double metres = 0.127e-3 * Math.pow(92, (36 - number) / 39.0);
        String size = number > 0 ? Integer.toString(number) : (1 - number) + "/0";
        return new WireGauge(Math.PI / 4 * metres * metres, "AWG " + size);
    }

    /** The AWG number if it was given as one; 0 is 1/0, -3 is 4/0. */
    public OptionalInt awgNumber() {
        if (!name.startsWith("AWG ")) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(nearestAwgNumber());
    }

    /** The AWG number nearest in diameter ratio, held to 30 .. -3. */
    public int nearestAwgNumber() {
        double metres = Math.sqrt(4 / Math.PI * squareMetres);
        double exact = 36 - 39 * Math.log(metres / 0.127e-3) / Math.log(92);
        return (int) Math.max(THICKEST, Math.min(THINNEST, Math.round(exact)));
    }

    @Override
    public int compareTo(WireGauge other) {
        int byArea = Double.compare(squareMetres, other.squareMetres);
        return byArea != 0 ? byArea : name.compareTo(other.name);
    }

    @Override
    public String toString() {
        return name;
    }
}

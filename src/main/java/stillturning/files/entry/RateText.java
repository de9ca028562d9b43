package stillturning.files.entry;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.yaml.notation.Source;
import stillturning.yaml.notation.TextForm;

/**
 * How often something happens, written {@code 3e-6 /h}, {@code 3e-6 /h within 3 (data sheet)} or
 * {@code 1e-3 /flight (guess)}: half of all cases are rarer, and in nine of ten cases it is within
 * that factor of it.
 *
 * @param times how often in one hour, in one flight, or each time it is needed
 * @param within factor, at least 1; empty where nobody says
 */
public record RateText(double times, RateBasis unit, Optional<Double> within, Source source) {

    /** What a rate is counted by. */
    public enum RateBasis {
        HOUR("/h"),
        FLIGHT("/flight"),
        NEED("/need");

        private final String symbol;

        RateBasis(String symbol) {
            this.symbol = symbol;
        }

        /** As written in a file. */
        public String symbol() {
            return symbol;
        }
    }

    static final String EXAMPLE = "3e-6 /h within 3 (data sheet)";

    private static final double MOST = 1e6;
    private static final String NUMBER = "[0-9]{1,12}(\\.[0-9]{1,12})?([eE][+-]?[0-9]{1,3})?";
    private static final Pattern RATE =
            Pattern.compile(
                    "(?<times>"
                            + NUMBER
                            + ") *(/ *|per )(?<unit>h|hour|flight|need)"
                            + "( +within +(?<within>"
                            + NUMBER
                            + "))?");

    static Optional<RateText> read(String text, TextForm.FaultReceiver faults) {
        int open = text.indexOf('(');
        String value = (open < 0 ? text : text.substring(0, open)).strip();
        Optional<Source> source = Source.read(text, open, faults);
        Matcher matcher = RATE.matcher(value);
        if (!matcher.matches()) {
            faults.at(
                    0,
                    "\"" + TextPiece.shown(value) + "\" is no rate",
                    "write how often in an hour, such as "
                            + EXAMPLE
                            + "; in a flight (/flight); or each time it is needed (/need)");
            return Optional.empty();
        }
        double times = Double.parseDouble(matcher.group("times"));
        Optional<Double> within =
                Optional.ofNullable(matcher.group("within")).map(Double::parseDouble);
        if (within.filter(f -> f < 1 || f > MOST).isPresent()) {
            faults.at(
                    matcher.start("within"),
                    matcher.group("within") + " is out of range",
                    "write a factor from 1 to 1000000");
            return Optional.empty();
        }
        RateBasis unit = unit(matcher.group("unit"));
        double most = unit == RateBasis.HOUR ? MOST : 1;
        if (times > most) {
            faults.at(
                    0,
                    matcher.group("times") + " is out of range",
                    "write at most " + (unit == RateBasis.HOUR ? "1000000" : "1"));
            return Optional.empty();
        }
        return source.map(s -> new RateText(times, unit, within, s));
    }

    private static RateBasis unit(String word) {
        return switch (word) {
            case "flight" -> RateBasis.FLIGHT;
            case "need" -> RateBasis.NEED;
            default -> RateBasis.HOUR;
        };
    }
}

package stillturning.files.entry;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import stillturning.yaml.notation.Source;
import stillturning.yaml.notation.TextForm;

/**
 * Money: an amount and the three-letter code of its currency, written {@code 120 EUR} or {@code 120
 * EUR (guess)}.
 */
public record Price(double amount, String currency, Source source) {

    static final String EXAMPLE = "120 EUR";

    private static final Pattern MONEY =
            Pattern.compile("(?<amount>[0-9]{1,9}(\\.[0-9]{1,4})?) *(?<code>[A-Z]{3})");

    /** The text that reads back as this price. */
    public String written() {
        String number = BigDecimal.valueOf(amount).stripTrailingZeros().toPlainString();
        return source.after(number + " " + currency);
    }

    static Optional<Price> read(String text, TextForm.FaultReceiver faults) {
        int open = text.indexOf('(');
        String money = (open < 0 ? text : text.substring(0, open)).strip();
        Optional<Source> source = Source.read(text, open, faults);
        Matcher matcher = MONEY.matcher(money);
        if (!matcher.matches()) {
            faults.at(
                    0,
                    "\"" + TextPiece.shown(money) + "\" is no price",
                    "write an amount, with a decimal point, and the currency's three-letter code,"
                            + " such as "
                            + EXAMPLE);
            return Optional.empty();
        }
        double amount = Double.parseDouble(matcher.group("amount"));
        return source.map(s -> new Price(amount, matcher.group("code"), s));
    }
}

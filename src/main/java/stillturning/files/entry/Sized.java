package stillturning.files.entry;

import java.math.BigDecimal;
import java.math.MathContext;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.Spread;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Source;

/** Values of a class, for a part of another size. */
final class Sized {

    private static final String SAID = "scaled to its size";

    /** A guess for one size is no more exact for another. */
    private static final MathContext DIGITS = new MathContext(3);

    private Sized() {}

    static Given times(Given value, double factor) {
        Quantity quantity = rounded(value.quantity().si() * factor, value.quantity().dimension());
        return new Given(
                quantity,
                value.spread().map(s -> spread(s.si() * factor, quantity.dimension())),
                value.origin(),
                said(value.note()));
    }

    private static Spread spread(double si, Dimension dimension) {
        Quantity amount = rounded(si, dimension);
        return new Spread(amount.si(), amount.written());
    }

    private static Quantity rounded(double si, Dimension dimension) {
        return Quantity.of(rounded(si), dimension);
    }

    static Price times(Price price, double factor) {
        Source source = price.source();
        return new Price(
                rounded(price.amount() * factor),
                price.currency(),
                new Source(source.origin(), said(source.note())));
    }

    private static double rounded(double value) {
        return new BigDecimal(value).round(DIGITS).doubleValue();
    }

    private static String said(String note) {
        return note.isEmpty() ? SAID : note + ", " + SAID;
    }
}

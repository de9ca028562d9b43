package stillturning.files;

import java.util.ArrayList;
import java.util.List;
import stillturning.files.entry.Price;
import stillturning.files.entry.Values;
import stillturning.quantity.Quantity;
import stillturning.yaml.Given;
import stillturning.yaml.Origin;
import stillturning.yaml.Source;

/** Writes down every value of one file as it is used, and changes the one that is varied. */
final class Ledger implements Values.Change {

    private final String file;
    private final Variation variation;
    private final List<Assumption> assumptions = new ArrayList<>();

    Ledger(String file, Variation variation) {
        this.file = file;
        this.variation = variation;
    }

    List<Assumption> assumptions() {
        return assumptions;
    }

    @Override
    public Given given(String path, Given value) {
        note(path, value.quantity().written(), new Source(value.origin(), value.note()));
        if (!variation.hits(file, path)) {
            return value;
        }
        Quantity varied =
                Quantity.of(
                        value.quantity().si() * variation.factor(), value.quantity().dimension());
        return new Given(varied, value.origin(), value.note());
    }

    @Override
    public Price price(String path, Price value) {
        Price bare = new Price(value.amount(), value.currency(), Source.STATED);
        note(path, bare.written(), value.source());
        return variation.hits(file, path)
                ? new Price(value.amount() * variation.factor(), value.currency(), value.source())
                : value;
    }

    /** Writes down something that the program worked out and that is no number. */
    void automatic(String path, String text) {
        note(path, text, new Source(Origin.AUTOMATIC, ""));
    }

    private void note(String path, String text, Source source) {
        assumptions.add(new Assumption(file, path, text, source.origin(), source.note()));
    }
}

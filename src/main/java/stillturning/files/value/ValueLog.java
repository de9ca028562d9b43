package stillturning.files.value;

import java.util.ArrayList;
import java.util.List;
import stillturning.files.entry.Price;
import stillturning.files.entry.Values;
import stillturning.files.value.Variation.ValueChange;
import stillturning.files.value.Variation.ValuePlace;
import stillturning.quantity.Quantity;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Source;

/** Writes down every value of one file as it is used, and changes those that are varied. */
public final class ValueLog implements Values.ValueReplacement {

    private final String file;
    private final Variation variation;
    private final List<Assumption> assumptions = new ArrayList<>();
    private final List<Range> ranges = new ArrayList<>();

    public ValueLog(String file, Variation variation) {
        this.file = file;
        this.variation = variation;
    }

    public List<Assumption> assumptions() {
        return assumptions;
    }

    public List<Range> ranges() {
        return ranges;
    }

    @Override
    public Given given(String path, Given value) {
        ValuePlace place = new ValuePlace(file, path);
        note(path, value.value(), new Source(value.origin(), value.note()));
        DefaultSpread.rangeOf(place, value).ifPresent(ranges::add);
        ValueChange change = variation.changes().get(place);
        if (change == null) {
            return value;
        }
        Quantity varied =
                Quantity.of(change.of(value.quantity().si()), value.quantity().dimension());
        return new Given(varied, value.spread(), value.origin(), value.note());
    }

    @Override
    public Price price(String path, Price value) {
        Price bare = new Price(value.amount(), value.currency(), Source.STATED);
        note(path, bare.written(), value.source());
        ValueChange change = variation.changes().get(new ValuePlace(file, path));
        return change == null
                ? value
                : new Price(change.of(value.amount()), value.currency(), value.source());
    }

    /** Writes down something that the program worked out and that is no number. */
    public void automatic(String path, String text) {
        note(path, text, new Source(Origin.AUTOMATIC, ""));
    }

    /** Writes down the class of parts that nobody has said anything about. */
    public void supposedClass(String kind, String name) {
        note(
                DocumentPlaces.under("classes", kind),
                name,
                new Source(Origin.GUESSED, "nothing says the class of each " + kind));
    }

    /** Writes down what the program itself guesses of a kind of thing; no file can state it. */
    public void supposedLaw(String what, String text) {
        note(what, text, new Source(Origin.GUESSED, "the program's own, not stated in a file"));
    }

    private void note(String path, String text, Source source) {
        assumptions.add(new Assumption(file, path, text, source.origin(), source.note()));
    }
}

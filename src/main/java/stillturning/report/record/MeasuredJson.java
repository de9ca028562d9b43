package stillturning.report.record;

import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.reliability.asbuilt.Compared;
import stillturning.reliability.asbuilt.FittedValue;
import stillturning.reliability.asbuilt.FittedValue.Known;
import stillturning.reliability.asbuilt.FittedValue.Unknown;
import stillturning.reliability.asbuilt.Measurand;
import stillturning.report.json.JsonDocument;
import stillturning.report.json.JsonShape;
import stillturning.report.json.JsonTypes;
import stillturning.report.record.Explained.ExplainedPair;
import stillturning.report.record.Explained.WrittenValue;

/** What was measured of a built aircraft. */
public final class MeasuredJson {

    private static final JsonShape<FormLine> LINE =
            JsonShape.<FormLine>named("measurement")
                    .text("path", FormLine::path)
                    .says("Place in the form.")
                    .text("says", FormLine::says)
                    .word("kind", Measurand.MeasurandKind.class, l -> subject(l).kind())
                    .text("step", l -> subject(l).step())
                    .says("Of the ground test; empty for none.")
                    .text("at", l -> subject(l).at())
                    .number("predicted", l -> l.compared().expectation().predicted())
                    .says("V, A, s, C or ohm by its kind; of what must happen 1.")
                    .number("least", l -> l.compared().expectation().low())
                    .number("most", l -> l.compared().expectation().high())
                    .maybe("measured", JsonTypes.NUMBER, l -> boxed(l.compared().measured()))
                    .maybe("half", JsonTypes.NUMBER, l -> boxed(l.compared().half()))
                    .says("Half the interval of 95 % by noise alone; null where none is known.")
                    .word("verdict", Compared.Agreement.class, l -> l.compared().verdict())
                    .text("from", FormLine::from)
                    .says(
                            "Name of the log that it was concluded from; empty if somebody wrote"
                                    + " it.");

    private static final JsonShape<FittedValue> ESTIMATE =
            JsonShape.<FittedValue>named("estimate")
                    .maybe("value", JsonTypes.NUMBER, e -> e.known().map(Known::value))
                    .says("Null where the log does not tell it.")
                    .maybe("low", JsonTypes.NUMBER, e -> e.known().map(Known::low))
                    .maybe("high", JsonTypes.NUMBER, e -> e.known().map(Known::high))
                    .maybe(
                            "standardError",
                            JsonTypes.NUMBER,
                            e -> e.known().map(Known::standardError))
                    .maybe(
                            "mistakenFor",
                            JsonTypes.word(FittedValue.BatteryValue.class),
                            MeasuredJson::mistaken)
                    .says("The value from which the log cannot tell it apart.");

    private static final JsonShape<Fit> FIT =
            JsonShape.<Fit>named("discharge")
                    .text("battery", Fit::battery)
                    .text("log", Fit::file)
                    .whole("readings", f -> f.log().samples().size())
                    .number("seconds", f -> f.log().seconds())
                    .number("coulombs", f -> f.log().coulombs())
                    .number("celsius", f -> f.fitted().quality().celsius())
                    .number("rmsVolts", f -> f.fitted().quality().rmsVolts())
                    .number("widened", f -> f.fitted().quality().widened())
                    .says("By what neighbouring readings that are off together widen intervals.")
                    .flag("fits", f -> f.fitted().quality().fits())
                    .says(
                            "Whether the battery of the study follows the log; else none is"
                                    + " concluded.")
                    .number("correlation", f -> f.fitted().quality().together())
                    .says("Of the errors of capacity and resistance, from -1 to 1.")
                    .field("capacityCoulombs", ESTIMATE, f -> f.fitted().capacity())
                    .field("resistanceOhms", ESTIMATE, f -> f.fitted().ohms())
                    .field("charge", ESTIMATE, f -> f.fitted().charge());

    private static final JsonShape<ValueOffer> OFFER =
            JsonShape.<ValueOffer>named("offer")
                    .text("file", ValueOffer::file)
                    .text("path", o -> o.mapping() + "." + o.key())
                    .text("before", ValueOffer::before)
                    .says("Empty where nothing says it.")
                    .text("after", ValueOffer::after);

    private static final JsonShape<ExplainedValue> CAUSE =
            JsonShape.<ExplainedValue>named("cause")
                    .text("file", ExplainedValue::file)
                    .text("path", ExplainedValue::path)
                    .text("stated", ExplainedValue::stated)
                    .text("needed", ExplainedValue::needed)
                    .text("half", ExplainedValue::half)
                    .says("Half the interval of 95 % of what it would have to be.")
                    .flag("likely", c -> c.explanation().likely())
                    .says("Whether that is within what the study leaves open.")
                    .whole("mended", c -> c.explanation().mended())
                    .says("Readings that would then keep to their prediction.")
                    .whole("disagreeing", c -> c.explanation().disagreeing())
                    .whole("spoilt", c -> c.explanation().spoilt())
                    .says("Readings that then would not.")
                    .texts("alike", c -> c.explanation().alike())
                    .says("Values that these readings cannot tell from it.");

    private static final JsonShape<WrittenValue> VALUE =
            JsonShape.<WrittenValue>named("jointValue")
                    .text("file", WrittenValue::file)
                    .text("path", WrittenValue::path)
                    .text("stated", WrittenValue::stated)
                    .text("needed", WrittenValue::needed)
                    .text("half", WrittenValue::half)
                    .says("Half the interval of 95 %, the other value being unknown too.");

    private static final JsonShape<ExplainedPair> TOGETHER =
            JsonShape.<ExplainedPair>named("together")
                    .field("one", VALUE, ExplainedPair::one)
                    .field("other", VALUE, ExplainedPair::other)
                    .number("correlation", t -> t.explanation().correlation())
                    .says("Of the errors of the two, from -1 to 1.")
                    .flag("likely", t -> t.explanation().likely())
                    .says("Whether both are within what the study leaves open.")
                    .whole("mended", t -> t.explanation().mended())
                    .says("Readings that would then keep to their prediction.")
                    .whole("disagreeing", t -> t.explanation().disagreeing())
                    .whole("spoilt", t -> t.explanation().spoilt())
                    .says("Readings that then would not.");

    /** The whole document. */
    public static final JsonDocument<AsBuilt> AS_BUILT =
            new JsonDocument<>(
                    "A candidate as it was built",
                    "What was measured beside what was predicted, and values that follow from it.",
                    JsonDocument.<AsBuilt>start()
                            .text("study", b -> b.study().id())
                            .text("candidate", b -> b.candidate().id())
                            .text("date", AsBuilt::date)
                            .says("Of the measurements; empty if nobody said.")
                            .list("measurements", LINE, AsBuilt::lines)
                            .says("Everything that was asked for.")
                            .maybe("discharge", FIT, AsBuilt::fit)
                            .list("offers", OFFER, AsBuilt::offers)
                            .says("Values that could be taken into the study.")
                            .list("causes", CAUSE, b -> b.causes().alone())
                            .says("Single values that would explain what does not agree.")
                            .list("together", TOGETHER, b -> b.causes().together())
                            .says("Two values at once, where no single one explains as much.")
                            .texts("remarks", AsBuilt::remarks));

    private MeasuredJson() {}

    private static Measurand subject(FormLine line) {
        return line.compared().expectation().subject();
    }

    private static Optional<Double> boxed(OptionalDouble value) {
        return value.isPresent() ? Optional.of(value.getAsDouble()) : Optional.empty();
    }

    private static Optional<FittedValue.BatteryValue> mistaken(FittedValue estimate) {
        return estimate.fold(known -> Optional.empty(), Unknown::mistakenFor);
    }
}

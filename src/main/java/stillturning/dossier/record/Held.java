package stillturning.dossier.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import stillturning.files.record.FilledForm;
import stillturning.files.record.FilledForm.Filled;
import stillturning.files.record.FilledForm.FilledValue;
import stillturning.files.record.FilledForm.Former;
import stillturning.files.record.MeasuredEntry;
import stillturning.files.record.MeasuredEntry.Item;
import stillturning.files.record.MeasuredEntry.Prediction;
import stillturning.model.LoadNeed;
import stillturning.parts.Wire;
import stillturning.parts.element.Demand;
import stillturning.quantity.Formats;
import stillturning.reliability.asbuilt.Compared;
import stillturning.reliability.asbuilt.Compared.Agreement;
import stillturning.reliability.asbuilt.DropFit;
import stillturning.reliability.asbuilt.Expectation;
import stillturning.reliability.asbuilt.FittedValue;
import stillturning.reliability.asbuilt.FittedValue.Known;
import stillturning.reliability.asbuilt.LoadCurrent;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.Explained;
import stillturning.report.record.Fit;
import stillturning.report.record.FormLine;
import stillturning.report.record.MeasuredWords;
import stillturning.yaml.Problem;
import stillturning.yaml.YamlDocument;

/** What was filled in and what a log says, held against what is predicted. */
public final class Held {

    private final AskedFor asked;
    private final Map<String, FormLine> lines = new LinkedHashMap<>();
    private final List<String> remarks = new ArrayList<>();

    private Held(AskedFor asked) {
        this.asked = asked;
        asked.lines().forEach(line -> lines.put(line.path(), line));
    }

    /** What is wrong with a form that can be read, at its place. */
    public static List<Problem> problems(AskedFor asked, FilledForm form, YamlDocument document) {
        List<Problem> problems = new ArrayList<>();
        Held held = new Held(asked);
        for (Filled filled : form.filled()) {
            Optional<Demand> demand = held.demand(filled.path());
            boolean bare = filled.values().stream().anyMatch(v -> v.at().isEmpty());
            if (bare && demand.filter(LoadCurrent::asksForVolts).isPresent()) {
                problems.add(
                        document.places()
                                .problem(
                                        filled.path(),
                                        "its current hangs on its voltage, and that is not said",
                                        "write it as 1.3 A at 12.6 V"));
            }
        }
        return problems;
    }

    /**
     * Holds one against the other.
     *
     * @param date of the measurements; empty if nobody said
     */
    public static AsBuilt of(
            AskedFor asked, String date, Optional<FilledForm> form, Optional<Fit> fit) {
        Held held = new Held(asked);
        form.ifPresent(held::take);
        fit.ifPresent(held::take);
        List<FormLine> all = List.copyOf(held.lines.values());
        return new AsBuilt(
                asked.study(),
                asked.candidate(),
                date,
                all,
                fit,
                ValueOffers.of(asked.read(), asked.candidate().id(), date, all),
                Explained.NOTHING,
                held.remarks);
    }

    private void take(FilledForm form) {
        if (!form.study().equals(asked.read().fingerprint())) {
            remarks.add(
                    "The study has changed since the form was written; what is predicted here is"
                            + " what it predicts now.");
        }
        form.filled().forEach(this::take);
        form.former()
                .forEach(
                        former ->
                                remarks.add(
                                        "No longer asked for, kept as it stands in the form: "
                                                + former.path()
                                                + ": "
                                                + former.text()
                                                + "."));
    }

    private void take(Filled filled) {
        FormLine line = line(filled.path());
        Expectation expectation = line.compared().expectation();
        Compared compared =
                switch (expectation.subject().kind()) {
                    case LOAD_AMPS -> load(filled, expectation);
                    case PATH_OHMS -> path(filled, expectation);
                    case HAPPENED, VOLTS, AMPS, OUT_SECONDS, CAPACITY, BATTERY_OHMS ->
                            new Compared(
                                    expectation,
                                    OptionalDouble.of(filled.values().get(0).value()),
                                    OptionalDouble.empty());
                };
        put(line.measured(compared, filled.text(), ""));
    }

    private FormLine line(String path) {
        return Optional.ofNullable(lines.get(path)).orElseThrow();
    }

    private void put(FormLine line) {
        lines.put(line.path(), line);
        Expectation expectation = line.compared().expectation();
        if (expectation.subject().kind() == MeasurandKind.PATH_OHMS
                && line.compared().verdict() == Agreement.DISAGREES) {
            asked.candidate()
                    .wire(expectation.subject().at())
                    .ifPresent(wire -> remarks.add(beyond(wire, line)));
        }
    }

    private String beyond(Wire wire, FormLine line) {
        double more =
                line.compared().measured().orElseThrow()
                        - line.compared().expectation().predicted();
        String copper = Formats.fixed(wire.metres(), 2) + " m of AWG " + wire.cable().awg();
        return asked.words().of(wire.id())
                + ": "
                + MeasuredWords.value(MeasurandKind.PATH_OHMS, Math.abs(more))
                + (more > 0
                        ? " more than "
                                + copper
                                + ": a bad crimp or lug at its ends, or a thinner or longer wire"
                                + " than the study has."
                        : " less than "
                                + copper
                                + ": a thicker or shorter wire than the study has, or it was not"
                                + " measured from end to end.");
    }

    private Compared load(Filled filled, Expectation expectation) {
        Demand demand = demand(filled.path()).orElseThrow();
        double amps =
                filled.values().stream()
                        .mapToDouble(
                                v ->
                                        LoadCurrent.atNominal(
                                                demand,
                                                v.value(),
                                                v.at().orElse(demand.nominalVolts())))
                        .average()
                        .orElseThrow();
        return new Compared(expectation, OptionalDouble.of(amps), OptionalDouble.empty());
    }

    private Optional<Demand> demand(String path) {
        Expectation expectation = line(path).compared().expectation();
        return expectation.subject().kind() == MeasurandKind.LOAD_AMPS
                ? asked.study().aircraft().load(expectation.subject().at()).map(LoadNeed::demand)
                : Optional.empty();
    }

    private static Compared path(Filled filled, Expectation expectation) {
        DropFit.Fitted fitted = DropFit.of(filled.values().stream().map(Held::drop).toList());
        return new Compared(expectation, OptionalDouble.of(fitted.ohms()), fitted.half());
    }

    private static DropFit.MeasuredDrop drop(FilledValue value) {
        return new DropFit.MeasuredDrop(value.value(), value.at().orElseThrow());
    }

    private void take(Fit fit) {
        if (fit.fitted().quality().fits()) {
            take(fit, MeasurandKind.CAPACITY, fit.fitted().capacity());
            take(fit, MeasurandKind.BATTERY_OHMS, fit.fitted().ohms());
        }
    }

    private void take(Fit fit, MeasurandKind kind, FittedValue estimate) {
        FormLine line =
                lines.values().stream()
                        .filter(
                                l ->
                                        l.compared().expectation().subject().kind() == kind
                                                && l.compared()
                                                        .expectation()
                                                        .subject()
                                                        .at()
                                                        .equals(fit.battery()))
                        .findFirst()
                        .orElseThrow();
        estimate.known()
                .ifPresent(
                        known -> {
                            if (line.compared().measured().isPresent()) {
                                remarks.add(
                                        "The "
                                                + line.says()
                                                + " stands in the form and in the log; that of the"
                                                + " log is taken.");
                            }
                            put(line.measured(compared(line, known), "", fit.file()));
                        });
    }

    private static Compared compared(FormLine line, Known known) {
        return new Compared(
                line.compared().expectation(),
                OptionalDouble.of(known.value()),
                OptionalDouble.of(known.half()));
    }

    /**
     * What is added to the record: everything that was measured, and every step of the ground test
     * that was not done.
     *
     * @param form in which it was written, if it was
     */
    public static MeasuredEntry entry(
            AsBuilt built, Optional<FilledForm> form, String fingerprint) {
        Stream<Item> asked =
                built.lines().stream()
                        .filter(
                                line ->
                                        line.compared().measured().isPresent()
                                                || kind(line) == MeasurandKind.HAPPENED)
                        .map(Held::item);
        Stream<Item> former =
                form.stream().flatMap(f -> f.former().stream()).map(Held::noLongerAsked);
        return new MeasuredEntry(
                built.date(),
                form.map(FilledForm::by).orElse(""),
                fingerprint,
                Stream.concat(asked, former).toList());
    }

    private static Item noLongerAsked(Former former) {
        return new Item(
                former.path(),
                former.path(),
                former.text(),
                Prediction.NONE,
                MeasuredWords.NO_LONGER,
                "");
    }

    private static MeasurandKind kind(FormLine line) {
        return line.compared().expectation().subject().kind();
    }

    private static Item item(FormLine line) {
        Expectation expectation = line.compared().expectation();
        MeasurandKind kind = kind(line);
        return new Item(
                line.path(),
                line.says(),
                MeasuredWords.measured(line.compared()),
                kind == MeasurandKind.HAPPENED
                        ? Prediction.NONE
                        : new Prediction(
                                MeasuredWords.value(kind, expectation.predicted()),
                                MeasuredWords.value(kind, expectation.low()),
                                MeasuredWords.value(kind, expectation.high())),
                MeasuredWords.verdict(line.compared()),
                line.from());
    }
}

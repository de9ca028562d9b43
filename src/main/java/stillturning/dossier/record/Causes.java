package stillturning.dossier.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import stillturning.files.StudyReader;
import stillturning.files.value.Range;
import stillturning.files.value.Variation;
import stillturning.files.value.Variation.ValueChange;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.reliability.asbuilt.Compared;
import stillturning.reliability.asbuilt.Compared.Agreement;
import stillturning.reliability.asbuilt.Explanation;
import stillturning.reliability.asbuilt.JointExplanation.Needed;
import stillturning.reliability.asbuilt.Measurand;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.reliability.asbuilt.OpenValue;
import stillturning.reliability.asbuilt.SingleValueFits;
import stillturning.reliability.asbuilt.StepKey;
import stillturning.reliability.groundtest.Configuration;
import stillturning.reliability.groundtest.InstrumentReading;
import stillturning.reliability.groundtest.Replay;
import stillturning.reliability.groundtest.TestStep;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.Explained;
import stillturning.report.record.Explained.ExplainedPair;
import stillturning.report.record.Explained.WrittenValue;
import stillturning.report.record.ExplainedValue;
import stillturning.report.record.FormLine;
import stillturning.story.UntoldStory;

/**
 * Which values of a study would explain readings of a ground test that do not keep to their
 * prediction: the steps in question are tried again with each value a little larger.
 */
public final class Causes {

    /** Dimensions that move volts and amps. */
    private static final Set<Dimension> ELECTRICAL =
            Set.of(
                    Dimension.VOLTAGE,
                    Dimension.CURRENT,
                    Dimension.RESISTANCE,
                    Dimension.CHARGE,
                    Dimension.POWER,
                    Dimension.LENGTH,
                    Dimension.RATIO,
                    Dimension.TEMPERATURE,
                    Dimension.ROTATION);

    /** A step of a value, as a share of what the study leaves open of it. */
    private static final double TRIED = 0.5;

    private final StudyReader reader;
    private final AskedFor asked;
    private final String candidate;

    /**
     * @param reader makes the study again with one value changed
     */
    public Causes(StudyReader reader, AskedFor asked) {
        this.reader = reader;
        this.asked = asked;
        this.candidate = asked.candidate().id();
    }

    /** Volts and amps that were measured in the steps in which one does not keep to its limits. */
    private static List<Compared> inQuestion(AsBuilt built) {
        List<Compared> read =
                built.lines().stream()
                        .map(FormLine::compared)
                        .filter(c -> c.measured().isPresent())
                        .filter(c -> isReading(c.expectation().subject().kind()))
                        .toList();
        boolean wrong = read.stream().anyMatch(c -> c.verdict() == Agreement.DISAGREES);
        return wrong ? read : List.of();
    }

    private static boolean isReading(MeasurandKind kind) {
        return kind == MeasurandKind.VOLTS || kind == MeasurandKind.AMPS;
    }

    /**
     * Values that would explain it, the best first; none where every reading keeps to its limits.
     *
     * @param tried told after each value
     * @throws UntoldStory if the steps cannot be tried as the study is
     */
    public Explained of(AsBuilt built, Consumer<String> tried) throws UntoldStory {
        List<Compared> readings = inQuestion(built);
        if (readings.isEmpty()) {
            return Explained.NOTHING;
        }
        double[] before = readings(built.study(), built.candidate(), readings);
        List<OpenValue> values = new ArrayList<>();
        List<double[]> slopes = new ArrayList<>();
        Map<OpenValue, Range> ranges = new LinkedHashMap<>();
        for (Range range : open()) {
            slope(range, readings, before)
                    .ifPresent(
                            slope -> {
                                values.add(value(range));
                                ranges.put(value(range), range);
                                slopes.add(slope);
                            });
            tried.accept(range.place().path());
        }
        return new Explained(
                SingleValueFits.of(readings, values, slopes).stream()
                        .map(e -> cause(e, range(ranges, e.value())))
                        .toList(),
                SingleValueFits.together(readings, values, slopes).stream()
                        .map(
                                e ->
                                        new ExplainedPair(
                                                e,
                                                written(e.one(), range(ranges, e.one().value())),
                                                written(
                                                        e.other(),
                                                        range(ranges, e.other().value()))))
                        .toList());
    }

    private static Range range(Map<OpenValue, Range> ranges, OpenValue value) {
        return Optional.ofNullable(ranges.get(value)).orElseThrow();
    }

    private static WrittenValue written(Needed needed, Range range) {
        return new WrittenValue(
                range.place().file(),
                range.place().path(),
                range.text(),
                Quantity.shown(needed.needed(), range.dimension(), range.text()),
                Quantity.shown(needed.half(), range.dimension(), range.text()));
    }

    private static ExplainedValue cause(Explanation explanation, Range range) {
        return new ExplainedValue(
                explanation,
                range.place().file(),
                range.place().path(),
                range.text(),
                Quantity.shown(explanation.needed(), range.dimension(), range.text()),
                Quantity.shown(explanation.half(), range.dimension(), range.text()));
    }

    private List<Range> open() {
        Set<String> files = Set.of("study.yaml", candidate + ".yaml");
        return asked.read().ranges().stream()
                .filter(r -> files.contains(r.place().file()))
                .filter(r -> ELECTRICAL.contains(r.dimension()))
                .filter(r -> r.high() > r.low() && r.likely() > 0)
                .toList();
    }

    /** How many values are tried. */
    public int count(AsBuilt built) {
        return inQuestion(built).isEmpty() ? 0 : open().size();
    }

    private static OpenValue value(Range range) {
        return new OpenValue(
                range.place().file() + " " + range.place().path(),
                range.low(),
                range.likely(),
                range.high());
    }

    /** Empty where the study cannot be told with the value changed, or does not answer to it. */
    private Optional<double[]> slope(Range range, List<Compared> readings, double[] before) {
        boolean up = range.high() > range.likely();
        double step = TRIED * (up ? range.high() - range.likely() : range.low() - range.likely());
        Variation varied = new Variation(Map.of(range.place(), new ValueChange(1, step)), Map.of());
        Optional<Study> study = reader.only(Set.of(candidate), varied).study();
        if (study.isEmpty()) {
            return Optional.empty();
        }
        try {
            Candidate changed = study.get().candidate(candidate).orElseThrow();
            double[] then = readings(study.get(), changed, readings);
            double most = 0;
            for (int i = 0; i < then.length; i++) {
                then[i] = (then[i] - before[i]) / step;
                most = Math.max(most, Math.abs(then[i]));
            }
            return most > 0 ? Optional.of(then) : Optional.empty();
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private double[] readings(Study study, Candidate as, List<Compared> wanted) throws UntoldStory {
        Map<String, TestStep> steps =
                asked.test().map(test -> StepKey.steps(test.plan())).orElse(Map.of());
        Map<Configuration, Replay> replays = new LinkedHashMap<>();
        Map<String, Map<Measurand, Double>> played = new LinkedHashMap<>();
        double[] values = new double[wanted.size()];
        for (int i = 0; i < values.length; i++) {
            Measurand subject = wanted.get(i).expectation().subject();
            Map<Measurand, Double> there = played.get(subject.step());
            if (there == null) {
                Configuration configuration = StepKey.configurationOf(subject.step());
                Replay replay = replays.get(configuration);
                if (replay == null) {
                    replay = new Replay(study, as, configuration);
                    replays.put(configuration, replay);
                }
                Optional<TestStep> step = Optional.ofNullable(steps.get(subject.step()));
                there = bySubject(subject.step(), replay.readings(step));
                played.put(subject.step(), there);
            }
            values[i] = Optional.ofNullable(there.get(subject)).orElseThrow();
        }
        return values;
    }

    private static Map<Measurand, Double> bySubject(String step, List<InstrumentReading> readings) {
        return readings.stream()
                .collect(
                        Collectors.toMap(
                                r ->
                                        new Measurand(
                                                r.of() == InstrumentReading.MeasuredQuantity.VOLTS
                                                        ? MeasurandKind.VOLTS
                                                        : MeasurandKind.AMPS,
                                                step,
                                                r.at()),
                                InstrumentReading::predicted));
    }
}

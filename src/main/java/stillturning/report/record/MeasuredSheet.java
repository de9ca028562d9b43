package stillturning.report.record;

import java.util.ArrayList;
import java.util.List;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.quantity.Formats;
import stillturning.reliability.asbuilt.Compared.Agreement;
import stillturning.reliability.asbuilt.Expectation;
import stillturning.reliability.asbuilt.Explanation;
import stillturning.reliability.asbuilt.FittedBattery;
import stillturning.reliability.asbuilt.FittedBattery.Quality;
import stillturning.reliability.asbuilt.FittedValue;
import stillturning.reliability.asbuilt.Measurand.MeasurandKind;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Words;
import stillturning.report.record.Explained.ExplainedPair;
import stillturning.report.record.Explained.WrittenValue;
import stillturning.report.table.Column;

/** What was measured, for a person: what does not keep to its prediction first. */
public final class MeasuredSheet {

    private final AsBuilt built;
    private final List<Block> blocks = new ArrayList<>();

    private MeasuredSheet(AsBuilt built) {
        this.built = built;
    }

    /** The blocks, without a title and without the cautions. */
    public static List<Block> of(AsBuilt built) {
        MeasuredSheet sheet = new MeasuredSheet(built);
        built.fit().ifPresent(sheet::fit);
        sheet.summary();
        sheet.table("Does not keep to its prediction", Agreement.DISAGREES);
        sheet.causes();
        sheet.table("Keeps to its prediction", Agreement.AGREES);
        if (!built.remarks().isEmpty()) {
            sheet.blocks.add(new Heading("Remarks"));
            sheet.blocks.add(new Points(built.remarks()));
        }
        sheet.offers();
        return List.copyOf(sheet.blocks);
    }

    private void fit(Fit fit) {
        FittedBattery fitted = fit.fitted();
        Quality quality = fitted.quality();
        blocks.add(new Heading("Discharge of " + fit.label() + ": " + fit.file()));
        blocks.add(
                new Words(
                        fit.log().samples().size()
                                + " readings over "
                                + Formats.duration(fit.log().seconds())
                                + ", "
                                + Formats.fixed(fit.log().coulombs() / 3600, 2)
                                + " Ah at "
                                + Formats.fixed(fit.log().leastAmps(), 1)
                                + " to "
                                + Formats.fixed(fit.log().mostAmps(), 1)
                                + " A; battery at "
                                + Formats.fixed(quality.celsius(), 0)
                                + " °C."));
        if (!quality.fits()) {
            blocks.add(
                    new Lead(
                            "The battery of the study does not follow this log: "
                                    + millivolts(quality.rmsVolts())
                                    + " are left over whatever its capacity and resistance, so"
                                    + " nothing is concluded. Another chemistry, another number of"
                                    + " cells, a shorted cell, or a log of something else?"));
            return;
        }
        Cell stated = fit.stated();
        blocks.add(
                Grid.of(
                        List.of(FittedValue.BatteryValue.values()),
                        List.of(
                                Column.words("of the battery", 28, MeasuredWords::name),
                                Column.words("study", 12, of -> stated(stated, of)),
                                Column.words(
                                        "from the log",
                                        50,
                                        of -> MeasuredWords.estimate(of, estimate(fitted, of))))));
        blocks.add(new Note(quality(quality, stated)));
    }

    private static String quality(Quality quality, Cell cell) {
        String left =
                "Left over: "
                        + millivolts(quality.rmsVolts())
                        + " (root of the mean square of "
                        + quality.readings()
                        + " readings).";
        String together =
                quality.widened() > 1
                        ? " Neighbouring readings are off together, so the intervals are "
                                + Formats.fixed(quality.widened(), 1)
                                + " times as wide as their scatter alone would make them."
                        : "";
        return left
                + together
                + " The errors of capacity and resistance go together by "
                + Formats.fixed(quality.together(), 2)
                + " (0: not at all, 1 or -1: wholly)."
                + " Capacity and resistance are those at 25 °C, their age in them."
                + rated(cell.capacity())
                + " The intervals hold for noise alone: an instrument that reads a hundredth too"
                + " much, or a battery unlike the curve of its chemistry, is not in them.";
    }

    private static String rated(Capacity capacity) {
        return capacity.exponent() > 1
                ? " The capacity is that at a discharge over "
                        + Formats.duration(3600 * capacity.ratedHours())
                        + ", as far as the Peukert exponent "
                        + Formats.significant(capacity.exponent(), 3)
                        + " of the study is right."
                : "";
    }

    private static String millivolts(double volts) {
        return Formats.significant(1000 * volts, 2) + " mV";
    }

    private static String stated(Cell cell, FittedValue.BatteryValue of) {
        return switch (of) {
            case CAPACITY ->
                    MeasuredWords.value(MeasurandKind.CAPACITY, cell.capacity().coulombs());
            case RESISTANCE -> MeasuredWords.value(MeasurandKind.BATTERY_OHMS, cell.ohms());
            case CHARGE -> "";
        };
    }

    private static FittedValue estimate(FittedBattery fitted, FittedValue.BatteryValue of) {
        return switch (of) {
            case CAPACITY -> fitted.capacity();
            case RESISTANCE -> fitted.ohms();
            case CHARGE -> fitted.charge();
        };
    }

    private void summary() {
        long steps = count(MeasurandKind.HAPPENED, Agreement.AGREES);
        long failed = count(MeasurandKind.HAPPENED, Agreement.DISAGREES);
        long open = count(MeasurandKind.HAPPENED, Agreement.NOT_MEASURED);
        int off = built.with(Agreement.DISAGREES).size();
        int kept = built.with(Agreement.AGREES).size();
        String tests =
                steps + failed + open == 0
                        ? ""
                        : " Steps of the ground test: "
                                + steps
                                + " passed, "
                                + failed
                                + " failed, "
                                + open
                                + " not done.";
        blocks.add(
                new Lead(
                        off + kept == 0
                                ? "No value follows from what was measured." + tests
                                : off == 0
                                        ? "Everything measured keeps to what was predicted." + tests
                                        : off
                                                + " of "
                                                + (off + kept)
                                                + " measurements "
                                                + (off == 1 ? "does" : "do")
                                                + " not keep to what was predicted."
                                                + tests));
    }

    private long count(MeasurandKind kind, Agreement verdict) {
        return built.with(verdict).stream()
                .filter(line -> line.compared().expectation().subject().kind() == kind)
                .count();
    }

    private void table(String heading, Agreement verdict) {
        List<FormLine> lines = built.with(verdict);
        if (lines.isEmpty()) {
            return;
        }
        blocks.add(new Heading(heading));
        blocks.add(
                Grid.of(
                        lines,
                        List.of(
                                Column.words("what", 44, FormLine::says),
                                Column.figures(
                                        "measured", 18, l -> MeasuredWords.measured(l.compared())),
                                Column.figures("predicted", 10, MeasuredSheet::predicted),
                                Column.figures(
                                        "keeps to it",
                                        20,
                                        l -> MeasuredWords.limits(l.compared().expectation())))));
    }

    private static String predicted(FormLine line) {
        Expectation expectation = line.compared().expectation();
        return MeasuredWords.value(expectation.subject().kind(), expectation.predicted());
    }

    private void causes() {
        if (built.causes().alone().isEmpty() && built.causes().together().isEmpty()) {
            return;
        }
        blocks.add(new Heading("What would explain it"));
        alone();
        together();
    }

    private void alone() {
        List<ExplainedValue> alone = built.causes().alone();
        if (alone.isEmpty()) {
            blocks.add(new Words("No single value of the study would."));
            return;
        }
        blocks.add(
                new Words(
                        "One value of the study at a time, moved until least is left over of the"
                                + " readings; each is a question to the aircraft and no finding."));
        blocks.add(
                Grid.of(
                        alone,
                        List.of(
                                Column.words("value of the study", 36, ExplainedValue::path),
                                Column.figures("as stated", 12, ExplainedValue::stated),
                                Column.figures(
                                        "would have to be", 18, c -> c.needed() + " ±" + c.half()),
                                Column.words(
                                        "may it be",
                                        9,
                                        c -> c.explanation().likely() ? "yes" : "hardly"),
                                Column.words("explains", 12, MeasuredSheet::explains))));
        blocks.add(
                new Note(
                        "May it be: whether that lies within what the study leaves open. Explains:"
                                + " how many of the volts and amps that are off would then keep to"
                                + " what is predicted."));
        List<String> alike =
                alone.stream()
                        .filter(c -> !c.explanation().alike().isEmpty())
                        .map(
                                c ->
                                        c.path()
                                                + " cannot be told from "
                                                + String.join(", ", c.explanation().alike())
                                                + " by these readings.")
                        .toList();
        if (!alike.isEmpty()) {
            blocks.add(new Points(alike));
        }
    }

    private void together() {
        List<ExplainedPair> together = built.causes().together();
        if (together.isEmpty()) {
            return;
        }
        blocks.add(
                new Words(
                        "Two values at once, which explain more than any single one; an interval"
                                + " counts that the other is not known either."));
        blocks.add(
                Grid.of(
                        together,
                        List.of(
                                Column.words(
                                        "two values",
                                        40,
                                        t -> needed(t.one()) + "; " + needed(t.other())),
                                Column.figures(
                                        "errors go together",
                                        10,
                                        t -> Formats.fixed(t.explanation().correlation(), 2)),
                                Column.words(
                                        "may it be",
                                        9,
                                        t -> t.explanation().likely() ? "yes" : "hardly"),
                                Column.words(
                                        "explains",
                                        12,
                                        t ->
                                                explains(
                                                        t.explanation().mended(),
                                                        t.explanation().disagreeing(),
                                                        t.explanation().spoilt())))));
    }

    private static String needed(WrittenValue value) {
        return value.path()
                + " "
                + value.needed()
                + " ±"
                + value.half()
                + " (stated "
                + value.stated()
                + ")";
    }

    private static String explains(ExplainedValue cause) {
        Explanation e = cause.explanation();
        return explains(e.mended(), e.disagreeing(), e.spoilt());
    }

    private static String explains(int mended, int disagreeing, int spoilt) {
        return mended + " of " + disagreeing + (spoilt > 0 ? ", spoils " + spoilt : "");
    }

    private void offers() {
        if (built.offers().isEmpty()) {
            return;
        }
        blocks.add(new Heading("Measured values for the study"));
        blocks.add(
                Grid.of(
                        built.offers(),
                        List.of(
                                Column.words("file", 22, ValueOffer::file),
                                Column.words("value", 30, o -> o.mapping() + "." + o.key()),
                                Column.words(
                                        "as it is",
                                        22,
                                        o -> o.before().isEmpty() ? "-" : o.before()),
                                Column.words("as measured", 30, ValueOffer::after))));
        if (built.offers().stream().anyMatch(o -> o.file().equals("study.yaml"))) {
            blocks.add(new Note("What stands in study.yaml is shared by all candidates."));
        }
    }
}

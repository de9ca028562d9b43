package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTables.PART;
import static stillturning.report.table.Column.number;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.AMPS;
import static stillturning.report.table.Unit.MINUTES;
import static stillturning.report.table.Unit.PERCENT;
import static stillturning.report.table.Unit.VOLTS;
import static stillturning.report.table.Unit.WATTS;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;
import stillturning.quantity.Formats;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.LoadAnalysis.ChargeStep;
import stillturning.sizing.result.LoadAnalysis.LoadRow;
import stillturning.sizing.result.LoadAnalysis.PhaseBalance;
import stillturning.sizing.result.LoadAnalysis.Taken;
import stillturning.sizing.result.SizingReport;

/** What loads take, and what gives it. */
public final class LoadTables {

    /** Batteries through the flight. */
    public static final List<Column<ChargeStep>> CHARGE =
            List.of(
                    Column.<ChargeStep>words("battery", PART, ChargeStep::battery).key("battery"),
                    Column.<ChargeStep>words("phase", 12, ChargeStep::phase).key("phase"),
                    Column.<ChargeStep>number("from", PERCENT, 1, ChargeStep::start).key("start"),
                    Column.<ChargeStep>number("to", PERCENT, 1, ChargeStep::end).key("end"));

    private static final List<Column<PhaseBalance>> SOURCES =
            List.of(
                    words("phase", 10, b -> b.phase().name()),
                    number("name plates", AMPS, 1, b -> b.average().nameplateAmps()),
                    number("loads take", AMPS, 1, b -> b.average().loadAmps()),
                    number("alternators give", AMPS, 1, b -> b.average().generatedAmps()),
                    number("batteries give", AMPS, 1, b -> b.average().batteryAmps()),
                    number("sources give", WATTS, 1, b -> b.average().watts().sources()),
                    number("lost on the way", WATTS, 1, b -> b.average().watts().lost()),
                    number("alternators can", AMPS, 1, PhaseBalance::alternatorAmps),
                    number("margin", AMPS, 1, b -> b.alternatorAmps() - b.average().joinedAmps()));

    private static final List<Column<PhaseBalance>> ALL_ON =
            List.of(
                    words("phase", 10, b -> b.phase().name()),
                    number("name plates", AMPS, 1, b -> b.full().nameplateAmps()),
                    number("loads take", AMPS, 1, b -> b.full().loadAmps()),
                    number("alternators give", AMPS, 1, b -> b.full().generatedAmps()),
                    number("batteries give", AMPS, 1, b -> b.full().batteryAmps()),
                    lasting("batteries alone", b -> b.batteryOnly().unaidedSeconds()),
                    lasting("as planned", b -> b.batteryOnly().plannedSeconds()));

    private static final List<Column<Running>> LOADS =
            List.of(
                    words("load", PART, r -> r.of.load()),
                    words("phase", 12, Running::phase),
                    words(
                            "runs",
                            12,
                            r ->
                                    r.of.continuous()
                                            ? "continuous"
                                            : Formats.percent(r.of.duty()) + " of it"),
                    number("for", MINUTES, 1, r -> r.taken.seconds()),
                    number("nominal", AMPS, 1, r -> r.of.nominalAmps()),
                    number("takes", AMPS, 2, r -> r.taken.amps()),
                    number("has", VOLTS, 2, r -> r.taken.volts()),
                    number("takes", WATTS, 1, r -> r.taken.amps() * r.taken.volts()));

    /** A load in a phase in which it runs. */
    private record Running(LoadRow of, String phase, Taken taken) {}

    private LoadTables() {}

    private static Column<PhaseBalance> lasting(
            String head, ToDoubleFunction<PhaseBalance> lasting) {
        return number(
                head,
                MINUTES,
                minutes -> Formats.fixed(Math.floor(minutes), 0),
                b -> {
                    double seconds = lasting.applyAsDouble(b);
                    return Double.isInfinite(seconds) || seconds <= 0 ? Double.NaN : seconds;
                });
    }

    static Table<?> byPhase(SizingReport report, SizeTables made) {
        List<Column<LoadRow>> columns = new ArrayList<>();
        columns.add(words("load", PART, LoadRow::load));
        columns.add(words("runs", 10, r -> r.continuous() ? "on" : Formats.percent(r.duty())));
        columns.add(number("nominal", AMPS, 2, LoadRow::nominalAmps));
        for (PhaseBalance balance : report.loads().phases()) {
            String phase = balance.phase().name();
            columns.add(
                    Column.<LoadRow>number(phase, AMPS, 2, row -> amps(row.at().get(phase)))
                            .orBlank());
        }
        return made.table(
                "loads-by-phase",
                "What each load takes",
                columns,
                report.loads().loads(),
                "Solved, while every load that may run in the phase runs at its full current.");
    }

    private static double amps(@Nullable Taken taken) {
        return taken == null ? Double.NaN : taken.amps();
    }

    static Table<?> loads(SizingReport report, SizeTables made) {
        return made.table(
                "load-analysis",
                "Loads",
                LOADS,
                report.loads().loads().stream()
                        .flatMap(
                                load ->
                                        load.at().entrySet().stream()
                                                .map(
                                                        at ->
                                                                new Running(
                                                                        load,
                                                                        at.getKey(),
                                                                        at.getValue())))
                        .toList(),
                "takes, has: solved, while every load that may run in the phase runs at its"
                        + " full current");
    }

    static Table<?> sources(SizingReport report, SizeTables made) {
        return made.table(
                "sources",
                "Sources on average",
                SOURCES,
                report.loads().phases(),
                "Loads that run now and then count with their share. Below 0 batteries are"
                        + " charged. Alternators can: with a full field; a bus below the set point"
                        + " weakens the field, and batteries give before the margin is used up.");
    }

    static Table<?> allOn(SizingReport report, SizeTables made) {
        return made.table(
                "all-on",
                "Everything on at once; batteries alone",
                ALL_ON,
                report.loads().phases(),
                "Batteries alone: from the loss of all charging until the engine can no longer"
                        + " run, the pilot doing nothing, and as planned; \"-\" where it is not"
                        + " limited, and where it is not asked: while the engine is started.");
    }

    static Table<?> charge(SizingReport report, SizeTables made) {
        return made.table(
                "charge", "Batteries through the flight", CHARGE, report.loads().charge());
    }
}

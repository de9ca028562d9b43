package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTable.Head.number;
import static stillturning.report.sizes.SizeTable.Head.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.sizes.SizeTable.Head;
import stillturning.sizing.LoadAnalysis.Balance;
import stillturning.sizing.LoadAnalysis.LoadRow;
import stillturning.sizing.LoadAnalysis.Taken;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WireSchedule.Circuit;
import stillturning.sizing.WireSchedule.Main;
import stillturning.sizing.WireSize;

/** The tables of a candidate's sizes. */
public final class SizeTables {

    static final int PART = 24;

    /** Less is no current worth a figure (A). */
    private static final double IDLE_AMPS = 0.005;

    private SizeTables() {}

    /** What one reads, in order, in metres and kilograms. */
    public static List<SizeTable> of(SizingReport report) {
        return of(report, UnitSystem.METRIC);
    }

    /** What one reads, in order. */
    public static List<SizeTable> of(SizingReport report, UnitSystem system) {
        SizeUnits units = new SizeUnits(system);
        return List.of(
                loadsByPhase(report),
                sources(report),
                allOn(report),
                charge(report),
                wires(report, units),
                drops(report, units),
                mains(report),
                DeviceTables.protectors(report),
                DeviceTables.contacts(report),
                DeviceTables.cranking(report),
                Purchases.weight(report, units),
                Purchases.cable(report, units));
    }

    /** What one takes along to add up, to buy, to cut and to crimp, in metres and kilograms. */
    public static List<SizeTable> lists(SizingReport report) {
        return lists(report, UnitSystem.METRIC);
    }

    /** What one takes along to add up, to buy, to cut and to crimp. */
    public static List<SizeTable> lists(SizingReport report, UnitSystem system) {
        SizeUnits units = new SizeUnits(system);
        return List.of(
                loads(report),
                Purchases.bill(report, units),
                WireLists.wires(report, units),
                WireLists.labels(report));
    }

    private static SizeTable loadsByPhase(SizingReport report) {
        List<Head> heads =
                new ArrayList<>(
                        List.of(words("load", PART), words("runs", 10), number("nominal (A)")));
        List<String> phases = report.loads().phases().stream().map(b -> b.phase().name()).toList();
        phases.forEach(phase -> heads.add(number(phase + " (A)")));
        List<List<String>> rows = new ArrayList<>();
        for (LoadRow load : report.loads().loads()) {
            List<String> row = new ArrayList<>();
            row.add(load.load());
            row.add(load.continuous() ? "on" : Formats.percent(load.duty()));
            row.add(two(load.nominalAmps()));
            for (String phase : phases) {
                Taken taken = load.at().get(phase);
                row.add(taken == null ? "" : two(taken.amps()));
            }
            rows.add(row);
        }
        return new SizeTable(
                "loads-by-phase",
                "What each load takes",
                heads,
                rows,
                List.of(
                        "Solved, while every load that may run in the phase runs at its full"
                                + " current."));
    }

    private static SizeTable loads(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (LoadRow load : report.loads().loads()) {
            for (Map.Entry<String, Taken> at : load.at().entrySet()) {
                Taken taken = at.getValue();
                rows.add(
                        List.of(
                                load.load(),
                                at.getKey(),
                                load.continuous()
                                        ? "continuous"
                                        : Formats.percent(load.duty()) + " of it",
                                minutes(taken.seconds()),
                                one(load.nominalAmps()),
                                two(taken.amps()),
                                two(taken.volts()),
                                one(taken.amps() * taken.volts())));
            }
        }
        return new SizeTable(
                "load-analysis",
                "Loads",
                List.of(
                        words("load", PART),
                        words("phase", 12),
                        words("runs", 12),
                        number("for (min)"),
                        number("nominal (A)"),
                        number("takes (A)"),
                        number("has (V)"),
                        number("takes (W)")),
                rows,
                List.of(
                        "takes, has: solved, while every load that may run in the phase runs at its"
                                + " full current"));
    }

    private static SizeTable sources(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (Balance b : report.loads().phases()) {
            rows.add(
                    List.of(
                            b.phase().name(),
                            one(b.average().nameplateAmps()),
                            one(b.average().loadAmps()),
                            one(b.average().generatedAmps()),
                            one(b.average().batteryAmps()),
                            one(b.average().watts().sources()),
                            one(b.average().watts().lost()),
                            one(b.alternatorAmps()),
                            one(b.alternatorAmps() - b.average().sourceAmps())));
        }
        return new SizeTable(
                "sources",
                "Sources on average",
                List.of(
                        words("phase", 10),
                        number("name plates (A)"),
                        number("loads take (A)"),
                        number("alter- nators give (A)"),
                        number("batteries give (A)"),
                        number("sources give (W)"),
                        number("lost on the way (W)"),
                        number("alter- nators can (A)"),
                        number("margin (A)")),
                rows,
                List.of(
                        "Loads that run now and then count with their share. Below 0 batteries are"
                                + " charged. Alternators can: with a full field; a bus below the"
                                + " set point weakens the field, and batteries give before the"
                                + " margin is used up."));
    }

    private static SizeTable allOn(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (Balance b : report.loads().phases()) {
            rows.add(
                    List.of(
                            b.phase().name(),
                            one(b.full().nameplateAmps()),
                            one(b.full().loadAmps()),
                            one(b.full().generatedAmps()),
                            one(b.full().batteryAmps()),
                            lasting(b.batteryOnly().unaidedSeconds()),
                            lasting(b.batteryOnly().plannedSeconds())));
        }
        return new SizeTable(
                "all-on",
                "Everything on at once; batteries alone",
                List.of(
                        words("phase", 10),
                        number("name plates (A)"),
                        number("loads take (A)"),
                        number("alter- nators give (A)"),
                        number("batteries give (A)"),
                        number("batteries alone (min)"),
                        number("as planned (min)")),
                rows,
                List.of(
                        "Batteries alone: from the loss of all charging until the engine can no"
                                + " longer run, the pilot doing nothing, and as planned; \"-\" where"
                                + " it is not limited."));
    }

    private static SizeTable charge(SizingReport report) {
        return new SizeTable(
                "charge",
                "Batteries through the flight",
                List.of(
                        words("battery", PART),
                        words("phase", 12),
                        number("from (%)"),
                        number("to (%)")),
                report.loads().charge().stream()
                        .map(
                                s ->
                                        List.of(
                                                s.battery(),
                                                s.phase(),
                                                one(100 * s.start()),
                                                one(100 * s.end())))
                        .toList(),
                List.of());
    }

    private static SizeTable wires(SizingReport report, SizeUnits units) {
        return new SizeTable(
                "wires",
                "Wires",
                List.of(
                        words("wire", PART),
                        words("AWG", 4),
                        number("length (" + units.length() + ")"),
                        number("worst (A)"),
                        number("may (A)"),
                        number("slack"),
                        number("warm (°C)"),
                        words("guarded by", 28),
                        words("needs", 5)),
                report.wires().wires().stream().map(w -> wire(w, units)).toList(),
                List.of(
                        "worst: over the phases and every single failure, shorts apart. may: AC"
                                + " 43.13-1B, by a law laid through the points that could be read,"
                                + " with the temperature, altitude and bundle of the study. needs:"
                                + " the thinnest size that meets every rule."));
    }

    private static List<String> wire(WireSize w, SizeUnits units) {
        boolean idle = w.worst().amps() < IDLE_AMPS;
        return List.of(
                w.wire().id(),
                w.wire().cable().awg(),
                units.length(w.wire().metres()),
                two(w.worst().amps()),
                one(w.can().amps()),
                idle ? "-" : one(w.slack()),
                idle ? "-" : Formats.fixed(w.can().conductorCelsius(), 0),
                w.guard().map(g -> g.part() + " " + one(g.ratedAmps()) + " A").orElse("-"),
                w.smallest().map(c -> c.awg()).orElse("none"));
    }

    private static SizeTable drops(SizingReport report, SizeUnits units) {
        List<List<String>> rows = new ArrayList<>();
        for (Circuit c : report.wires().circuits()) {
            rows.add(
                    List.of(
                            c.name(),
                            two(c.amps()),
                            units.length(c.metres()),
                            two(c.drop().volts()),
                            two(c.drop().limitVolts()),
                            c.drop().continuous() ? "continuous" : "now and then",
                            two(c.supply().volts()),
                            two(c.supply().minimumVolts()),
                            c.supply().phase()));
        }
        return new SizeTable(
                "voltage-drop",
                "Voltage drop from bus to load and back",
                List.of(
                        words("load", PART),
                        number("current (A)"),
                        number("out and back (" + units.length() + ")"),
                        number("wires drop (V)"),
                        number("limit (V)"),
                        words("load is", 12),
                        number("lowest supply (V)"),
                        number("minimum (V)"),
                        words("in", 10)),
                rows,
                List.of(
                        "limit: AC 43.13-1B table 11-6 (in a second source; now and then: from"
                                + " memory)"));
    }

    private static SizeTable mains(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (Main m : report.wires().mains()) {
            rows.add(
                    List.of(
                            m.source(),
                            m.bus(),
                            one(m.amps()),
                            two(m.drop().volts()),
                            two(m.drop().limitVolts()),
                            String.join(", ", m.wires())));
        }
        return new SizeTable(
                "main-power",
                "Main power wires",
                List.of(
                        words("source", 20),
                        words("bus", 18),
                        number("current (A)"),
                        number("wires drop (V)"),
                        number("limit (V)"),
                        words("wires", 40)),
                rows,
                List.of(
                        "current: rated, or that of discharge in five minutes, but no more than the"
                                + " rating of the smallest protector on the way"));
    }

    static String one(double value) {
        return Formats.fixed(value, 1);
    }

    static String two(double value) {
        return Formats.fixed(value, 2);
    }

    private static String minutes(double seconds) {
        return Formats.fixed(seconds / 60, seconds < 600 ? 1 : 0);
    }

    private static String lasting(double seconds) {
        if (Double.isInfinite(seconds) || seconds <= 0) {
            return "-";
        }
        return Formats.fixed(Math.floor(seconds / 60), 0);
    }
}

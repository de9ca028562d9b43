package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTables.PART;
import static stillturning.report.table.Column.number;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.AMPS;
import static stillturning.report.table.Unit.CELSIUS;
import static stillturning.report.table.Unit.LENGTH;
import static stillturning.report.table.Unit.NONE;
import static stillturning.report.table.Unit.VOLTS;

import java.util.List;
import java.util.stream.Stream;
import stillturning.quantity.Formats;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WireSchedule.LoadCircuit;
import stillturning.sizing.result.WireSchedule.MainCircuit;
import stillturning.sizing.result.WireSize;

/** Wires, what they drop, and what one takes along to cut, to crimp and to mark them. */
public final class WireTables {

    /** Less is no current worth a figure (A). */
    private static final double IDLE_AMPS = 0.005;

    /** Drop of circuits. */
    public static final List<Column<LoadCircuit>> DROPS =
            List.of(
                    Column.<LoadCircuit>words("load", PART, LoadCircuit::name).key("load"),
                    Column.<LoadCircuit>number("current", AMPS, 2, LoadCircuit::amps).key("amps"),
                    Column.<LoadCircuit>number("out and back", LENGTH, LoadCircuit::metres)
                            .key("metres"),
                    Column.<LoadCircuit>number("wires drop", VOLTS, 2, c -> told(c.drop().volts()))
                            .key("volts"),
                    Column.<LoadCircuit>number("limit", VOLTS, 2, c -> c.drop().limitVolts())
                            .key("limitVolts"),
                    words(
                            "load is",
                            12,
                            c -> c.drop().continuous() ? "continuous" : "now and then"),
                    Column.<LoadCircuit>number("lowest supply", VOLTS, 2, c -> c.supply().volts())
                            .key("supplyVolts"),
                    Column.<LoadCircuit>number("minimum", VOLTS, 2, c -> c.supply().minimumVolts())
                            .key("minimumVolts"),
                    words("in", 10, c -> c.supply().phase()));

    /** Drop of main power wires. */
    public static final List<Column<MainCircuit>> MAINS =
            List.of(
                    Column.<MainCircuit>words("source", 20, MainCircuit::source).key("source"),
                    Column.<MainCircuit>words("bus", 18, MainCircuit::bus).key("bus"),
                    Column.<MainCircuit>number("current", AMPS, 1, MainCircuit::amps).key("amps"),
                    Column.<MainCircuit>number("wires drop", VOLTS, 2, m -> m.drop().volts())
                            .key("volts"),
                    Column.<MainCircuit>number("limit", VOLTS, 2, m -> m.drop().limitVolts())
                            .key("limitVolts"),
                    words("wires", 40, m -> String.join(", ", m.wires())));

    /** A drop or a temperature; not a number where the place is too hot for the insulation. */
    private static double told(double value) {
        return Double.isFinite(value) ? value : Double.NaN;
    }

    private static final List<Column<WireSize>> WIRES =
            List.of(
                    words("wire", PART, w -> w.wire().id()),
                    words("AWG", 4, w -> w.wire().cable().awg()),
                    number("length", LENGTH, w -> w.wire().metres()),
                    number("worst", AMPS, 2, w -> w.worst().amps()),
                    number("may", AMPS, 1, w -> w.can().amps()),
                    number("slack", NONE, 1, w -> idle(w) ? Double.NaN : w.slack()),
                    number(
                            "warm",
                            CELSIUS,
                            0,
                            w -> idle(w) ? Double.NaN : told(w.can().conductorCelsius())),
                    words(
                            "guarded by",
                            28,
                            w ->
                                    w.guard()
                                            .map(
                                                    g ->
                                                            g.part()
                                                                    + " "
                                                                    + Formats.fixed(
                                                                            g.ratedAmps(), 1)
                                                                    + " A")
                                            .orElse("-")),
                    words("needs", 5, w -> w.smallest().map(c -> c.awg()).orElse("none")));

    private static final List<Column<WireSize>> LIST =
            List.of(
                    words("wire", 20, w -> w.wire().id()),
                    words("from", 20, w -> w.ends().from().toString()),
                    words("to", 20, w -> w.ends().to().toString()),
                    words("AWG", 4, w -> w.wire().cable().awg()),
                    number("length", LENGTH, w -> w.wire().metres()),
                    words("colour", 10, w -> w.ends().said().colour().orElse("")),
                    words("terminals", 10, w -> w.ends().said().terminals().orElse("")),
                    words("zones", 10, w -> String.join(" > ", w.ends().zones())),
                    words("protector", 16, w -> w.guard().map(g -> g.part()).orElse("")));

    private static final List<Column<Label>> LABELS =
            List.of(
                    words("at", 30, Label::here),
                    words("label", 30, l -> l.of.wire().id() + " AWG " + l.of.wire().cable().awg()),
                    words("other end", 30, Label::there));

    /** A label at one end of a wire. */
    private record Label(WireSize of, String here, String there) {

        static Stream<Label> both(WireSize of) {
            String from = of.ends().from().toString();
            String to = of.ends().to().toString();
            return Stream.of(new Label(of, from, to), new Label(of, to, from));
        }
    }

    private WireTables() {}

    private static boolean idle(WireSize wire) {
        return wire.worst().amps() < IDLE_AMPS;
    }

    static Table<?> wires(SizingReport report, SizeTables made) {
        return made.table(
                "wires",
                "Wires",
                WIRES,
                report.wires().wires(),
                "worst: over the phases and every single failure, shorts apart. may: AC 43.13-1B,"
                        + " by a law laid through the points that could be read, with the"
                        + " temperature, altitude and bundle of the study. needs: the thinnest"
                        + " size that meets every rule.");
    }

    static Table<?> drops(SizingReport report, SizeTables made) {
        return made.table(
                "voltage-drop",
                "Voltage drop from bus to load and back",
                DROPS,
                report.wires().circuits(),
                "limit: AC 43.13-1B table 11-6 (in a second source; now and then: from memory)");
    }

    static Table<?> mains(SizingReport report, SizeTables made) {
        return made.table(
                "main-power",
                "Main power wires",
                MAINS,
                report.wires().mains(),
                "current: rated, or that of discharge in five minutes, but no more than the rating"
                        + " of the smallest protector on the way");
    }

    static Table<?> list(SizingReport report, SizeTables made) {
        return made.table("wire-list", "Wire list", LIST, report.wires().wires());
    }

    /** Two for each wire: what it is, its size, and where the other end is. */
    static Table<?> labels(SizingReport report, SizeTables made) {
        return made.table(
                "labels",
                "Labels",
                LABELS,
                report.wires().wires().stream().flatMap(Label::both).toList());
    }
}

package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTables.PART;
import static stillturning.report.table.Column.number;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.AMPS;
import static stillturning.report.table.Unit.VOLTS;

import java.util.List;
import java.util.Locale;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.ContactSize;
import stillturning.sizing.result.CrankingSupply;
import stillturning.sizing.result.CrankingSupply.Fed;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.SizingReport;

/** Protectors, contacts, and the starting of the engine. */
final class DeviceTables {

    private static final List<Column<ProtectorSize>> PROTECTORS =
            List.of(
                    words("protector", PART, ProtectorSize::name),
                    number("rated", AMPS, 1, ProtectorSize::ratedAmps),
                    number("normal", AMPS, 2, p -> p.normal().amps()),
                    number("worst", AMPS, 2, p -> p.worst().amps()),
                    number("inrush", AMPS, 1, p -> ofInrush(p, p.passes().inrush().amps())),
                    number(
                            "lets through",
                            AMPS,
                            1,
                            p -> ofInrush(p, p.passes().inrush().letsThroughAmps())),
                    number("bolted short", AMPS, 0, p -> p.fault().amps().orElse(Double.NaN)),
                    number(
                            "interrupts",
                            AMPS,
                            0,
                            p -> p.fault().canInterruptAmps().orElse(Double.NaN)),
                    words("protects", 30, p -> String.join(", ", p.wires())));

    private static final List<Column<ContactSize>> CONTACTS =
            List.of(
                    words("contacts", PART, ContactSize::name),
                    words("of a", 10, c -> c.byHand() ? "switch" : "contactor"),
                    number("carry", AMPS, 2, c -> c.carried().amps()),
                    words("load is", 10, c -> c.nature().name().toLowerCase(Locale.ROOT)),
                    number("need", AMPS, 1, ContactSize::neededAmps),
                    number("have", AMPS, 0, c -> c.ratedAmps().orElse(Double.NaN)));

    private static final List<Column<Start>> CRANKING =
            List.of(
                    words("conditions", 26, s -> s.of.conditions()),
                    words("load", PART, s -> s.fed.load()),
                    number("lowest", VOLTS, 2, s -> s.fed.volts()),
                    number("minimum", VOLTS, 2, s -> s.fed.minimumVolts()),
                    words("stops", 5, s -> s.fed.stops() ? "yes" : ""),
                    words("engine runs", 6, s -> s.of.runs() ? "yes" : "no"));

    /** A load while the engine is started. */
    private record Start(CrankingSupply of, Fed fed) {}

    private DeviceTables() {}

    private static double ofInrush(ProtectorSize protector, double amps) {
        return protector.passes().inrush().amps() > 0 ? amps : Double.NaN;
    }

    static Table<?> protectors(SizingReport report, SizeTables made) {
        return made.table("protectors", "Protectors", PROTECTORS, report.devices().protectors());
    }

    static Table<?> contacts(SizingReport report, SizeTables made) {
        return made.table(
                "contacts",
                "Switches and contactors",
                CONTACTS,
                report.devices().contacts(),
                "need: AC 43.13-1B table 11-4, the 12 V column also for 14 V");
    }

    static Table<?> cranking(SizingReport report, SizeTables made) {
        return made.table(
                "cranking",
                "While the starter turns",
                CRANKING,
                report.cranking().stream()
                        .flatMap(c -> c.loads().stream().map(fed -> new Start(c, fed)))
                        .toList());
    }
}

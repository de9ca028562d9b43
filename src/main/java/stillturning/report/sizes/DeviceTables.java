package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTable.Head.number;
import static stillturning.report.sizes.SizeTable.Head.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import stillturning.quantity.Formats;
import stillturning.sizing.ContactSize;
import stillturning.sizing.CrankingSupply;
import stillturning.sizing.ProtectorSize;
import stillturning.sizing.SizingReport;

/** Protectors, contacts, and the starting of the engine. */
final class DeviceTables {

    private static final int PROTECTS = 30;

    private DeviceTables() {}

    static SizeTable protectors(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (ProtectorSize p : report.devices().protectors()) {
            rows.add(
                    List.of(
                            p.name(),
                            SizeTables.one(p.ratedAmps()),
                            SizeTables.two(p.normal().amps()),
                            SizeTables.two(p.worst().amps()),
                            p.inrush().amps() > 0 ? SizeTables.one(p.inrush().amps()) : "-",
                            p.inrush().amps() > 0
                                    ? SizeTables.one(p.inrush().letsThroughAmps())
                                    : "-",
                            Formats.fixed(p.fault().amps(), 0),
                            whole(p.fault().canInterruptAmps()),
                            String.join(", ", p.wires())));
        }
        return new SizeTable(
                "protectors",
                "Protectors",
                List.of(
                        words("protector", SizeTables.PART),
                        number("rated (A)"),
                        number("normal (A)"),
                        number("worst (A)"),
                        number("inrush (A)"),
                        number("lets through (A)"),
                        number("bolted short (A)"),
                        number("inter- rupts (A)"),
                        words("protects", PROTECTS)),
                rows,
                List.of());
    }

    static SizeTable contacts(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (ContactSize c : report.devices().contacts()) {
            rows.add(
                    List.of(
                            c.name(),
                            c.byHand() ? "switch" : "contactor",
                            SizeTables.two(c.carried().amps()),
                            c.nature().name().toLowerCase(Locale.ROOT),
                            SizeTables.one(c.neededAmps()),
                            whole(c.ratedAmps())));
        }
        return new SizeTable(
                "contacts",
                "Switches and contactors",
                List.of(
                        words("contacts", SizeTables.PART),
                        words("of a", 10),
                        number("carry (A)"),
                        words("load is", 10),
                        number("need (A)"),
                        number("have (A)")),
                rows,
                List.of("need: AC 43.13-1B table 11-4, the 12 V column also for 14 V"));
    }

    static SizeTable cranking(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (CrankingSupply c : report.cranking()) {
            for (CrankingSupply.Fed fed : c.loads()) {
                rows.add(
                        List.of(
                                c.conditions(),
                                fed.load(),
                                SizeTables.two(fed.volts()),
                                SizeTables.two(fed.minimumVolts()),
                                fed.stops() ? "yes" : "",
                                c.runs() ? "yes" : "no"));
            }
        }
        return new SizeTable(
                "cranking",
                "While the starter turns",
                List.of(
                        words("conditions", 26),
                        words("load", SizeTables.PART),
                        number("lowest (V)"),
                        number("minimum (V)"),
                        words("stops", 5),
                        words("engine runs", 6)),
                rows,
                List.of());
    }

    private static String whole(OptionalDouble value) {
        return value.isPresent() ? Formats.fixed(value.getAsDouble(), 0) : "-";
    }
}

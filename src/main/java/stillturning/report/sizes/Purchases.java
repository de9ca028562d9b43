package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTable.Head.number;
import static stillturning.report.sizes.SizeTable.Head.words;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import stillturning.quantity.Formats;
import stillturning.sizing.BillRow;
import stillturning.sizing.SizingReport;
import stillturning.sizing.WeightSheet;
import stillturning.sizing.WeightSheet.CableWeight;
import stillturning.sizing.WeightSheet.PartWeight;

/** What has to be carried and bought. */
final class Purchases {

    private Purchases() {}

    static SizeTable weight(SizingReport report, SizeUnits units) {
        WeightSheet sheet = report.purchase().weight();
        List<List<String>> rows = new ArrayList<>();
        for (PartWeight p : sheet.parts()) {
            rows.add(
                    List.of(
                            p.part(),
                            p.zone(),
                            units.mass(p.kilograms()),
                            arm(p.armMetres(), units),
                            p.armMetres().isPresent()
                                    ? units.moment(p.kilograms() * p.armMetres().getAsDouble())
                                    : "-"));
        }
        rows.add(
                List.of(
                        "all",
                        "",
                        units.mass(sheet.kilograms()),
                        "",
                        units.moment(sheet.momentKilogramMetres())));
        return new SizeTable(
                "weight",
                "Weight and moment",
                List.of(
                        words("part", 24),
                        words("zone", 20),
                        number("weight (" + units.mass() + ")"),
                        number("arm (" + units.arm() + ")"),
                        number("moment (" + units.moment() + ")")),
                rows,
                notes(sheet, units));
    }

    private static List<String> notes(WeightSheet sheet, SizeUnits units) {
        List<String> notes = new ArrayList<>();
        notes.add("Loads are not counted: they are the same in every candidate.");
        if (sheet.withoutArmKilograms() > 0) {
            notes.add(
                    units.mass(sheet.withoutArmKilograms())
                            + " "
                            + units.mass()
                            + " have no arm and are missing from the moment; write arm: to the"
                            + " zones of the study.");
        }
        return notes;
    }

    static SizeTable cable(SizingReport report, SizeUnits units) {
        List<List<String>> rows = new ArrayList<>();
        for (CableWeight c : report.purchase().weight().cable()) {
            rows.add(
                    List.of(
                            c.awg(),
                            units.length(c.metres()),
                            units.mass(c.conductorKilograms()),
                            units.mass(c.insulationKilograms()),
                            units.mass(c.terminalKilograms()),
                            units.mass(c.kilograms())));
        }
        return new SizeTable(
                "cable",
                "Cable by size",
                List.of(
                        words("AWG", 4),
                        number("length (" + units.length() + ")"),
                        number("conductor (" + units.mass() + ")"),
                        number("insulation (" + units.mass() + ")"),
                        number("terminals (" + units.mass() + ")"),
                        number("all (" + units.mass() + ")")),
                rows,
                List.of());
    }

    static SizeTable bill(SizingReport report, SizeUnits units) {
        List<List<String>> rows = new ArrayList<>();
        for (BillRow b : report.purchase().bill()) {
            boolean metres = b.unit() == BillRow.Unit.METRES;
            rows.add(
                    List.of(
                            b.item(),
                            b.detail(),
                            metres ? units.length(b.quantity()) : Formats.fixed(b.quantity(), 0),
                            metres ? units.length() : "pieces",
                            metres ? units.length(b.spares()) : Formats.fixed(b.spares(), 0),
                            units.mass(b.kilograms()),
                            SizeTables.two(b.price())));
        }
        return new SizeTable(
                "bill-of-materials",
                "Bill of materials",
                List.of(
                        words("item", 18),
                        words("detail", 40),
                        number("quantity"),
                        words("unit", 6),
                        number("spares"),
                        number("weight (" + units.mass() + ")"),
                        number("price")),
                rows,
                List.of(
                        "Spares: half of the fuses of each rating, at least one (14 CFR 23.1357 in a"
                                + " second source); a tenth of wire and terminals (common practice)."
                                + " The price of wire holds that of its terminals."));
    }

    private static String arm(OptionalDouble metres, SizeUnits units) {
        return metres.isPresent() ? units.arm(metres.getAsDouble()) : "-";
    }
}

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

    private static final int KILOGRAM_DIGITS = 3;

    private Purchases() {}

    static SizeTable weight(SizingReport report) {
        WeightSheet sheet = report.purchase().weight();
        List<List<String>> rows = new ArrayList<>();
        for (PartWeight p : sheet.parts()) {
            rows.add(
                    List.of(
                            p.part(),
                            p.zone(),
                            kilograms(p.kilograms()),
                            arm(p.armMetres()),
                            p.armMetres().isPresent()
                                    ? kilograms(p.kilograms() * p.armMetres().getAsDouble())
                                    : "-"));
        }
        rows.add(
                List.of(
                        "all",
                        "",
                        kilograms(sheet.kilograms()),
                        "",
                        kilograms(sheet.momentKilogramMetres())));
        return new SizeTable(
                "weight",
                "Weight and moment",
                List.of(
                        words("part", 24),
                        words("zone", 20),
                        number("weight (kg)"),
                        number("arm (m)"),
                        number("moment (kg m)")),
                rows,
                notes(sheet));
    }

    private static List<String> notes(WeightSheet sheet) {
        List<String> notes = new ArrayList<>();
        notes.add("Loads are not counted: they are the same in every candidate.");
        if (sheet.withoutArmKilograms() > 0) {
            notes.add(
                    kilograms(sheet.withoutArmKilograms())
                            + " kg have no arm and are missing from the moment; write arm: to the"
                            + " zones of the study.");
        }
        return notes;
    }

    static SizeTable cable(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (CableWeight c : report.purchase().weight().cable()) {
            rows.add(
                    List.of(
                            c.awg(),
                            SizeTables.two(c.metres()),
                            kilograms(c.conductorKilograms()),
                            kilograms(c.insulationKilograms()),
                            kilograms(c.terminalKilograms()),
                            kilograms(c.kilograms())));
        }
        return new SizeTable(
                "cable",
                "Cable by size",
                List.of(
                        words("AWG", 4),
                        number("length (m)"),
                        number("conductor (kg)"),
                        number("insulation (kg)"),
                        number("terminals (kg)"),
                        number("all (kg)")),
                rows,
                List.of());
    }

    static SizeTable bill(SizingReport report) {
        List<List<String>> rows = new ArrayList<>();
        for (BillRow b : report.purchase().bill()) {
            boolean metres = b.unit() == BillRow.Unit.METRES;
            int digits = metres ? 2 : 0;
            rows.add(
                    List.of(
                            b.item(),
                            b.detail(),
                            Formats.fixed(b.quantity(), digits),
                            metres ? "m" : "pieces",
                            Formats.fixed(b.spares(), digits),
                            kilograms(b.kilograms()),
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
                        number("weight (kg)"),
                        number("price")),
                rows,
                List.of(
                        "Spares: half of the fuses of each rating, at least one (14 CFR 23.1357 in a"
                                + " second source); a tenth of wire and terminals (common practice)."
                                + " The price of wire holds that of its terminals."));
    }

    private static String kilograms(double kilograms) {
        return Formats.fixed(kilograms, KILOGRAM_DIGITS);
    }

    private static String arm(OptionalDouble metres) {
        return metres.isPresent() ? SizeTables.two(metres.getAsDouble()) : "-";
    }
}

package stillturning.report.sizes;

import static stillturning.report.table.Column.number;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.ARM;
import static stillturning.report.table.Unit.LENGTH;
import static stillturning.report.table.Unit.MASS;
import static stillturning.report.table.Unit.MOMENT;
import static stillturning.report.table.Unit.NONE;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.BillRow;
import stillturning.sizing.result.SizingReport;
import stillturning.sizing.result.WeightSheet;
import stillturning.sizing.result.WeightSheet.CableWeight;
import stillturning.sizing.result.WeightSheet.PartWeight;

/** What has to be carried and bought. */
public final class Purchases {

    private static final List<Column<CableWeight>> CABLE =
            List.of(
                    words("AWG", 4, CableWeight::awg),
                    number("length", LENGTH, CableWeight::metres),
                    number("conductor", MASS, CableWeight::conductorKilograms),
                    number("insulation", MASS, CableWeight::insulationKilograms),
                    number("terminals", MASS, CableWeight::terminalKilograms),
                    number("all", MASS, CableWeight::kilograms));

    private Purchases() {}

    static Table<?> weight(SizingReport report, SizeTables made) {
        WeightSheet sheet = report.purchase().weight();
        UnitSystem system = made.system();
        List<String> notes = new ArrayList<>();
        notes.add("Loads are not counted: they are the same in every candidate.");
        if (sheet.withoutArmKilograms() > 0) {
            notes.add(
                    MASS.withSign(sheet.withoutArmKilograms(), system)
                            + " have no arm and are missing from the moment; write arm: to the"
                            + " zones of the study.");
        }
        return made.table(
                "weight",
                "Weight and moment",
                List.of(
                        Column.<PartWeight>words("part", 24, PartWeight::part).foot("all"),
                        words("zone", 20, PartWeight::zone),
                        Column.<PartWeight>number("weight", MASS, PartWeight::kilograms)
                                .foot(MASS.shown(sheet.kilograms(), system)),
                        number("arm", ARM, p -> p.armMetres().orElse(Double.NaN)),
                        Column.<PartWeight>number(
                                        "moment",
                                        MOMENT,
                                        p -> p.kilograms() * p.armMetres().orElse(Double.NaN))
                                .foot(MOMENT.shown(sheet.momentKilogramMetres(), system))),
                sheet.parts(),
                notes.toArray(String[]::new));
    }

    static Table<?> cable(SizingReport report, SizeTables made) {
        return made.table("cable", "Cable by size", CABLE, report.purchase().weight().cable());
    }

    static Table<?> bill(SizingReport report, SizeTables made) {
        return made.table(
                "bill-of-materials",
                "Bill of materials",
                billColumns(made.system()),
                report.purchase().bill(),
                "Spares: half of the fuses of each rating, at least one (14 CFR 23.1357 in a second"
                        + " source); a tenth of wire and terminals (common practice). The price of"
                        + " wire holds that of its terminals.");
    }

    /** What to buy. */
    public static List<Column<BillRow>> billColumns(UnitSystem system) {
        return List.of(
                Column.<BillRow>words("item", 18, BillRow::item).key("item"),
                Column.<BillRow>words("detail", 40, BillRow::detail).key("detail"),
                counted("quantity", BillRow::quantity, system),
                Column.<BillRow>words("unit", 6, b -> metres(b) ? LENGTH.sign(system) : "pieces")
                        .words("unit", b -> b.unit().name().toLowerCase(Locale.ROOT)),
                counted("spares", BillRow::spares, system),
                Column.<BillRow>number("weight", MASS, BillRow::kilograms).key("kilograms"),
                Column.<BillRow>number("price", NONE, 2, BillRow::price).key("price"));
    }

    /** Metres of wire, or pieces of anything else. */
    private static Column<BillRow> counted(
            String head, ToDoubleFunction<BillRow> count, UnitSystem system) {
        return Column.<BillRow>figures(
                        head,
                        10,
                        b ->
                                metres(b)
                                        ? LENGTH.shown(count.applyAsDouble(b), system)
                                        : Formats.fixed(count.applyAsDouble(b), 0))
                .value(head, count);
    }

    private static boolean metres(BillRow row) {
        return row.unit() == BillRow.CountingUnit.METRES;
    }
}

package stillturning.report.sizes;

import java.util.List;
import java.util.Set;
import stillturning.quantity.UnitSystem;
import stillturning.report.PrintedNames;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.sizing.result.SizingReport;

/** The tables of a candidate's sizes. */
public final class SizeTables {

    /** Characters of a part's name. */
    static final int PART = 24;

    /** They tell what is written on the sleeve of a wire, which is its name. */
    private static final Set<String> MARKED = Set.of("wire-list", "labels");

    private final UnitSystem system;

    SizeTables(UnitSystem system) {
        this.system = system;
    }

    /** What one reads, in order, in metres and kilograms. */
    public static List<Table<?>> of(SizingReport report) {
        return of(report, UnitSystem.METRIC);
    }

    /** What one reads, in order. */
    public static List<Table<?>> of(SizingReport report, UnitSystem system) {
        SizeTables made = new SizeTables(system);
        return List.of(
                LoadTables.byPhase(report, made),
                LoadTables.sources(report, made),
                LoadTables.allOn(report, made),
                LoadTables.charge(report, made),
                WireTables.wires(report, made),
                WireTables.drops(report, made),
                WireTables.mains(report, made),
                RouteTables.passages(report, made),
                RouteTables.company(report, made),
                DeviceTables.protectors(report, made),
                DeviceTables.contacts(report, made),
                DeviceTables.cranking(report, made),
                Purchases.weight(report, made),
                Purchases.cable(report, made));
    }

    /** What one takes along to add up, to buy, to cut and to crimp, in metres and kilograms. */
    public static List<Table<?>> lists(SizingReport report) {
        return lists(report, UnitSystem.METRIC);
    }

    /** What one takes along to add up, to buy, to cut and to crimp. */
    public static List<Table<?>> lists(SizingReport report, UnitSystem system) {
        SizeTables made = new SizeTables(system);
        return List.of(
                LoadTables.loads(report, made),
                Purchases.bill(report, made),
                WireTables.list(report, made),
                WireTables.labels(report, made));
    }

    /** The same with labels where parts are named. */
    public static List<Table<?>> spoken(List<? extends Table<?>> tables, PrintedNames names) {
        return tables.stream()
                .<Table<?>>map(t -> MARKED.contains(t.name()) ? t : t.said(names::cell))
                .toList();
    }

    UnitSystem system() {
        return system;
    }

    <R> Table<R> table(
            String name, String title, List<Column<R>> columns, List<R> rows, String... notes) {
        return new Table<>(name, title, columns, rows, List.of(notes), system);
    }
}

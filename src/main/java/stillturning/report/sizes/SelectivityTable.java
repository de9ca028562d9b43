package stillturning.report.sizes;

import static stillturning.report.table.Column.number;
import static stillturning.report.table.Column.words;
import static stillturning.report.table.Unit.SECONDS;

import java.util.List;
import stillturning.assess.verdict.Selectivity;
import stillturning.assess.verdict.Selectivity.ProtectorPair;
import stillturning.quantity.Formats;
import stillturning.quantity.UnitSystem;
import stillturning.report.table.Column;
import stillturning.report.table.Table;

/** Which protector may open before the one that is meant to. */
public final class SelectivityTable {

    private static final int SECOND_DIGITS = 3;

    private static final List<Column<ProtectorPair>> COLUMNS =
            List.of(
                    words("may open too soon", 22, ProtectorPair::upstream),
                    words("before", 22, ProtectorPair::downstream),
                    words("after, for example", 24, p -> p.worst().failure()),
                    number(
                            "fast in",
                            SECONDS,
                            SelectivityTable::seconds,
                            p -> p.worst().fastSeconds()),
                    number(
                            "slow in",
                            SECONDS,
                            SelectivityTable::seconds,
                            p -> p.worst().slowSeconds()),
                    words("then", 18, p -> p.worst().outcome().words()));

    private SelectivityTable() {}

    /** The table; without rows if no pair is in doubt. */
    public static Table<?> of(Selectivity selectivity) {
        return new SizeTables(UnitSystem.METRIC)
                .table(
                        "selectivity",
                        "Who may open before whom",
                        COLUMNS,
                        selectivity.pairs(),
                        "Each protector may open anywhere in its published band; one upstream may"
                                + " be fast while the one downstream is slow.");
    }

    private static String seconds(double seconds) {
        return Double.isInfinite(seconds) ? "never" : Formats.significant(seconds, SECOND_DIGITS);
    }
}

package stillturning.report.sizes;

import static stillturning.report.sizes.SizeTable.Head.number;
import static stillturning.report.sizes.SizeTable.Head.words;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Selectivity;
import stillturning.quantity.Formats;

/** Which protector may open before the one that is meant to. */
public final class SelectivityTable {

    private static final int SECOND_DIGITS = 3;

    private SelectivityTable() {}

    /** The table; without rows if no pair is in doubt. */
    public static SizeTable of(Selectivity selectivity) {
        List<List<String>> rows = new ArrayList<>();
        for (Selectivity.Pair pair : selectivity.pairs()) {
            rows.add(
                    List.of(
                            pair.upstream(),
                            pair.downstream(),
                            pair.worst().failure(),
                            seconds(pair.worst().fastSeconds()),
                            seconds(pair.worst().slowSeconds()),
                            pair.worst().outcome().words()));
        }
        return new SizeTable(
                "selectivity",
                "Who may open before whom",
                List.of(
                        words("may open too soon", 22),
                        words("before", 22),
                        words("after, for example", 24),
                        number("fast in (s)"),
                        number("slow in (s)"),
                        words("then", 18)),
                rows,
                List.of(
                        "Each protector may open anywhere in its published band; one upstream may be"
                                + " fast while the one downstream is slow."));
    }

    private static String seconds(double seconds) {
        return Double.isInfinite(seconds) ? "never" : Formats.significant(seconds, SECOND_DIGITS);
    }
}

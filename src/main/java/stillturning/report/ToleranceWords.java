package stillturning.report;

import java.util.List;
import stillturning.assess.verdict.Selectivity;
import stillturning.assess.verdict.Selectivity.FailureExample;
import stillturning.assess.verdict.Selectivity.ProtectorPair;
import stillturning.assess.verdict.ToleranceOutcome;
import stillturning.assess.verdict.Verdict;
import stillturning.report.page.Page.PairRow;
import stillturning.report.page.Page.PairTable;

/** What the tolerance of protectors leaves open, in words. */
public final class ToleranceWords {

    static final String LABEL = "within the protectors' tolerance";

    private static final String MEANING =
            "Each may open anywhere in its published band. Where the one upstream is fast and the"
                    + " one downstream slow, more goes dark than need be.";

    private ToleranceWords() {}

    /** One sentence on what may come of a failure instead. */
    static String inWords(Verdict verdict, ToleranceOutcome band) {
        String slow =
                Double.isInfinite(band.slowSeconds())
                        ? band.expected() + " may never open"
                        : band.expected() + " takes up to " + EventLines.time(band.slowSeconds());
        String race =
                band.unselective()
                        ? band.instead()
                                + " may be first, after "
                                + EventLines.time(band.fastSeconds())
                                + ", where "
                                + slow
                        : slow;
        return race
                + (verdict.mayBeWorse()
                        ? "; then: " + band.then().outcome().words()
                        : "; the outcome is no worse");
    }

    public static PairTable table(Selectivity selectivity) {
        return new PairTable(
                MEANING, selectivity.pairs().stream().map(ToleranceWords::row).toList());
    }

    private static PairRow row(ProtectorPair pair) {
        FailureExample worst = pair.worst();
        return new PairRow(
                List.of(
                        pair.upstream(),
                        pair.downstream(),
                        worst.failure()
                                + (pair.failures() > 1 ? " (of " + pair.failures() + ")" : ""),
                        EventLines.time(worst.fastSeconds()),
                        Double.isInfinite(worst.slowSeconds())
                                ? "never"
                                : EventLines.time(worst.slowSeconds()),
                        worst.outcome().words(),
                        worst.typically().words()));
    }
}

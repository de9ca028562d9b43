package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.verdict.Verdict;

/** What could not be computed of a candidate that is ranked all the same. */
public final class UntoldTexts {

    public static final String HEADING = "Cannot be computed";

    /** What it means; stands once above them. */
    public static final String MEANING =
            "What follows from these could not be computed. Each counts as engine lost in every"
                    + " number below; the rest of the candidate is as it is.";

    private UntoldTexts() {}

    /** Each failure, left switch and start with the reason and the part; empty if all was told. */
    public static List<String> findings(Appraisal appraisal) {
        List<String> lines = new ArrayList<>();
        for (Verdict verdict : appraisal.untold()) {
            verdict.untold().ifPresent(why -> lines.add(verdict.failure().name() + ": " + why));
        }
        appraisal
                .cases()
                .leftSwitches()
                .forEach(one -> one.untold().ifPresent(why -> lines.add(one.words() + ": " + why)));
        appraisal
                .cases()
                .starts()
                .forEach(
                        start ->
                                start.untold()
                                        .ifPresent(
                                                why ->
                                                        lines.add(
                                                                "start, "
                                                                        + start.conditions()
                                                                        + ": "
                                                                        + why)));
        return List.copyOf(lines);
    }
}

package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.verdict.Verdict;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.quantity.Formats;

/** The order of failures in tables. */
class FailureRowsTest {

    private static final Study STUDY =
            StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();

    private static String printed(Verdict verdict) {
        double acts = verdict.actBySeconds().orElse(Double.POSITIVE_INFINITY);
        double runs = verdict.planned().engine().endurance().seconds();
        return verdict.outcome() + " " + Formats.lasting(acts) + " " + Formats.lasting(runs);
    }

    /** A reader cannot see an order of digits that are not printed. */
    @Test
    void whatIsPrintedAlikeStandsInTheOrderOfNames() {
        boolean otherwiseByDigits = false;
        for (var appraisal : Assess.of(STUDY).appraisals()) {
            List<Verdict> rows = new ArrayList<>(appraisal.singles());
            rows.sort(FailureRows.GRAVEST_FIRST);
            for (int i = 1; i < rows.size(); i++) {
                Verdict above = rows.get(i - 1);
                Verdict row = rows.get(i);
                if (printed(above).equals(printed(row))) {
                    String both = above.failure().name() + ", " + row.failure().name();
                    assertTrue(above.failure().name().compareTo(row.failure().name()) < 0, both);
                    otherwiseByDigits |=
                            above.planned().engine().endurance().seconds()
                                    > row.planned().engine().endurance().seconds();
                }
            }
        }
        assertTrue(otherwiseByDigits, "nothing here that unprinted digits would put otherwise");
    }
}

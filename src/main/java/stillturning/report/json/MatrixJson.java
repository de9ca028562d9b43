package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Verdict;
import stillturning.report.FailureRows;
import stillturning.report.RankingOrder;

/** The matrix failure by candidate. */
final class MatrixJson {

    /** A failure of some candidates, which are named in the order of its verdicts. */
    private record Row(List<String> candidates, FailureRows.Row row) {

        Map<String, Verdict> verdicts() {
            Map<String, Verdict> verdicts = new LinkedHashMap<>();
            for (int i = 0; i < candidates.size(); i++) {
                String candidate = candidates.get(i);
                row.byCandidate().get(i).ifPresent(v -> verdicts.put(candidate, v));
            }
            return verdicts;
        }
    }

    private static final JsonShape<Verdict> CELL =
            JsonShape.<Verdict>named("cell")
                    .field("outcome", VerdictShapes.OUTCOME, Verdict::outcome)
                    .says("What the failure does, worst first in the list of values.")
                    .fieldsOf(VerdictShapes.LASTING, VerdictShapes::planned)
                    .maybe("actBySeconds", JsonTypes.NUMBER, Verdict::actBySeconds);

    private static final JsonShape<Row> ROW =
            JsonShape.<Row>named("row")
                    .text("failure", r -> r.row.failure())
                    .text("kind", r -> r.row.kind())
                    .says("Kind of the part that fails.")
                    .map("byCandidate", CELL, Row::verdicts)
                    .says("By candidate; only those that have the part.");

    static final JsonDocument<Assessment> MATRIX =
            new JsonDocument<>(
                    "Every failure of every candidate",
                    "What each failure does to each candidate, the pilot as planned.",
                    JsonDocument.<Assessment>start()
                            .text("study", a -> a.study().id())
                            .texts("candidates", MatrixJson::candidates)
                            .says("Best first.")
                            .list("failures", ROW, MatrixJson::rows));

    private MatrixJson() {}

    private static List<String> candidates(Assessment assessment) {
        return RankingOrder.of(assessment).stream().map(a -> a.candidate().id()).toList();
    }

    private static List<Row> rows(Assessment assessment) {
        List<String> candidates = candidates(assessment);
        return FailureRows.of(RankingOrder.of(assessment)).stream()
                .map(row -> new Row(candidates, row))
                .toList();
    }
}

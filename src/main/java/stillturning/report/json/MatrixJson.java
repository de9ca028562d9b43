package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Verdict;
import stillturning.report.FailureRows;
import stillturning.report.RankingOrder;
import stillturning.report.joint.SameEnding;
import stillturning.report.joint.SameEnding.By;

/** The matrix failure by candidate. */
final class MatrixJson {

    /** A failure of some candidates, which are named in the order of its verdicts. */
    private record Row(List<String> candidates, FailureRows.FailureRow row) {

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

    private static final JsonShape<SameEnding> ENDING =
            JsonShape.<SameEnding>named("ending")
                    .text("candidate", e -> e.candidate().id())
                    .field("outcome", VerdictShapes.OUTCOME, SameEnding::outcome)
                    .word("by", By.class, SameEnding::by)
                    .says("By what the engine stops.")
                    .texts("loads", SameEnding::loads)
                    .says("What it loses at once; empty where it first runs on what is stored.")
                    .texts(
                            "failures",
                            e -> e.failures().stream().map(f -> f.failure().name()).toList())
                    .says("The most frequent first.")
                    .number("perHour", SameEnding::perHour)
                    .says("How often any of them happens, by the medians of their rates.");

    /** The failures of a study, and those that stop the engine by what mends them. */
    record MatrixData(Assessment assessment, List<SameEnding> endings) {}

    static final JsonDocument<MatrixData> MATRIX =
            new JsonDocument<>(
                    "Every failure of every candidate",
                    "What each failure does to each candidate, the pilot as planned.",
                    JsonDocument.<MatrixData>start()
                            .text("study", m -> m.assessment.study().id())
                            .texts("candidates", m -> candidates(m.assessment))
                            .says("Best first.")
                            .list("endings", ENDING, MatrixData::endings)
                            .says("Failures that stop the engine and that one change mends.")
                            .list("failures", ROW, m -> rows(m.assessment)));

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

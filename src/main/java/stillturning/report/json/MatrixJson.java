package stillturning.report.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.Verdict;
import stillturning.report.Cautions;
import stillturning.report.FailureRows;
import stillturning.report.RankingOrder;

/** The shape of the matrix failure by candidate in JSON. */
record MatrixJson(
        int schemaVersion,
        String caution,
        String study,
        List<String> candidates,
        List<Row> failures) {

    /** One failure; only candidates that have the part are named. */
    record Row(String failure, String kind, Map<String, Cell> byCandidate) {}

    /** What it does to one candidate, the pilot as planned. */
    record Cell(
            String outcome,
            @Nullable Double enduranceSeconds,
            boolean enduranceLimited,
            @Nullable Double actBySeconds) {}

    static MatrixJson of(Assessment assessment) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<String> ids = appraisals.stream().map(a -> a.candidate().id()).toList();
        return new MatrixJson(
                JsonReport.SCHEMA_VERSION,
                Cautions.SHORT,
                assessment.study().id(),
                ids,
                FailureRows.of(appraisals).stream().map(row -> row(row, ids)).toList());
    }

    private static Row row(FailureRows.Row row, List<String> ids) {
        Map<String, Cell> cells = new LinkedHashMap<>();
        for (int i = 0; i < ids.size(); i++) {
            String id = ids.get(i);
            row.byCandidate().get(i).ifPresent(verdict -> cells.put(id, cell(verdict)));
        }
        return new Row(row.failure(), row.kind(), cells);
    }

    private static Cell cell(Verdict verdict) {
        return new Cell(
                JsonNumbers.kebab(verdict.outcome()),
                JsonNumbers.seconds(verdict.planned().engine().endurance()),
                JsonNumbers.limited(verdict.planned().engine().endurance()),
                verdict.actBySeconds().map(JsonNumbers::number).orElse(null));
    }
}

package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.report.RankingOrder;

/**
 * Each hard requirement against each candidate.
 *
 * @param candidates titles of the columns, best candidate first
 */
public record RequirementTable(List<String> candidates, List<Row> rows) {

    /** One requirement, with a cell for each candidate. */
    public record Row(String requirement, List<Cell> cells) {
        public Row {
            cells = List.copyOf(cells);
        }
    }

    /**
     * Whether a candidate meets a requirement.
     *
     * @param failures by which it is missed, or may be within the tolerance of protectors
     */
    public record Cell(
            String candidate,
            String title,
            String requirement,
            boolean met,
            String reason,
            List<String> failures) {
        public Cell {
            failures = List.copyOf(failures);
        }

        /** The verdict in a word that needs no colour. */
        public String word() {
            return met ? "\u2713 met" : "\u2716 missed";
        }
    }

    public RequirementTable {
        candidates = List.copyOf(candidates);
        rows = List.copyOf(rows);
    }

    /** The table of an assessment; without rows where the study asks for nothing. */
    static RequirementTable of(Assessment assessment) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<Row> rows = new ArrayList<>();
        int asked = appraisals.isEmpty() ? 0 : appraisals.get(0).met().size();
        for (int i = 0; i < asked; i++) {
            List<Cell> cells = new ArrayList<>();
            for (Appraisal appraisal : appraisals) {
                cells.add(cell(appraisal, appraisal.met().get(i)));
            }
            rows.add(new Row(cells.get(0).requirement(), cells));
        }
        return new RequirementTable(
                appraisals.stream().map(a -> a.candidate().title()).toList(), rows);
    }

    private static Cell cell(Appraisal appraisal, RequirementMet met) {
        return new Cell(
                appraisal.candidate().id(),
                appraisal.candidate().title(),
                met.requirement(),
                met.met(),
                met.reason(),
                met.culprits());
    }
}

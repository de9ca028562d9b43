package stillturning.report.paper;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.PilotBurden;
import stillturning.assess.ranking.Comparison;
import stillturning.assess.ranking.CriterionDifference;
import stillturning.assess.ranking.RankingResult;
import stillturning.model.goal.CriterionName;
import stillturning.report.ResultText;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.oneline.SmallDrawing;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Blanks;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lineup;
import stillturning.report.page.Block.Lineup.Head;
import stillturning.report.page.Block.Lineup.Shown;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Room;

/** The second page: the candidates, what was turned down and why, and who signs. */
final class CandidatesPage {

    /** So many fit on the page with their drawings. */
    private static final int SHOWN = 6;

    private static final int CRITERIA = 3;

    private static final Room SMALL = new Room(45, 25);
    private static final String NONE = "-";

    private static final List<Head> HEADS =
            List.of(
                    new Head("drawing", 27),
                    new Head("candidate, and why it stands here", 21),
                    new Head("requirements", 15),
                    new Head("engine stops", 6),
                    new Head("pilot needed", 7),
                    new Head("runs, none charging", 8),
                    new Head("weight", 6),
                    new Head("price", 5),
                    new Head("acts", 5));

    private final Standpoint from;
    private final PaperContents contents;
    private final Assessment assessment;

    CandidatesPage(Standpoint from, PaperContents contents) {
        this.from = from;
        this.contents = contents;
        this.assessment = from.assessment();
    }

    List<Block> blocks() {
        List<Block> blocks = new ArrayList<>();
        List<Shown> rows = new ArrayList<>();
        for (int i = 0; i < Math.min(SHOWN, from.ranked().size()); i++) {
            rows.add(row(i, from.ranked().get(i)));
        }
        blocks.add(new Lineup(HEADS, rows));
        blocks.add(
                new Note(
                        "Engine stops: single failures that end it. Pilot needed: single failures"
                                + " after which it runs, or runs again, only because of what the pilot"
                                + " does. Acts: moves in the procedures, of these within 30 s. Drawings"
                                + " leave out wires, protectors and closed switches."));
        below(from.ranked().size() - SHOWN).map(Note::new).ifPresent(blocks::add);
        contents.first()
                .leftOut()
                .forEach(
                        left ->
                                blocks.add(
                                        new Note(
                                                "Left out: "
                                                        + left.candidate()
                                                        + ": "
                                                        + left.reason())));
        blocks.add(new Heading("What was not analysed"));
        blocks.add(new Points(NotAnalysed.inShort(contents)));
        blocks.add(new Blanks(List.of("Builder, date", "Read by (technical counsellor), date")));
        blocks.add(new Note(fingerprint()));
        return List.copyOf(blocks);
    }

    private static Optional<String> below(int left) {
        if (left == 1) {
            return Optional.of("One more candidate ranks below.");
        }
        return left > 1 ? Optional.of(left + " more candidates rank below.") : Optional.empty();
    }

    private String fingerprint() {
        String date = contents.edition().date();
        String version = contents.edition().version();
        return "Fingerprint of the input files "
                + contents.sources().fingerprint()
                + (version.isEmpty() ? "" : "; " + version)
                + "; date: "
                + (date.isEmpty() ? "not given" : date);
    }

    private Shown row(int number, Appraisal appraisal) {
        Map<CriterionName, Double> values = appraisal.measures().values();
        return new Shown(
                new Drawing(
                        OneLine.of(
                                SmallDrawing.of(
                                        "small-" + (number + 1),
                                        appraisal.candidate(),
                                        assessment.study())),
                        SMALL),
                List.of(
                        (number + 1) + ". " + appraisal.candidate().title() + ". " + why(appraisal),
                        requirements(appraisal),
                        value(values, CriterionName.ENGINE_STOPS),
                        value(values, CriterionName.PILOT_NEEDED),
                        value(values, CriterionName.ENDURANCE),
                        value(values, CriterionName.WEIGHT),
                        value(values, CriterionName.COST),
                        acts(appraisal.measures().pilot())));
    }

    /** All that the pilot may have to do, and how many of these acts by heart. */
    private static String acts(PilotBurden pilot) {
        int byHeart = pilot.byHeart().size();
        return (byHeart + pilot.withTimeInHand().size()) + ", " + byHeart;
    }

    private String why(Appraisal appraisal) {
        return assessment.ranking().map(ranking -> why(ranking, appraisal)).orElse("");
    }

    /** Against the leader, or the leader against the next; the values stand in the columns. */
    private static String why(RankingResult ranking, Appraisal appraisal) {
        String own = appraisal.candidate().id();
        Optional<Comparison> beside =
                own.equals(ranking.leader().name())
                        ? ranking.whyFirst()
                        : Optional.of(ranking.compare(own, ranking.leader().name()));
        String than = own.equals(ranking.leader().name()) ? "Than the next: " : "Than the first: ";
        return beside.map(comparison -> beside(than, comparison)).orElse("");
    }

    private static String beside(String than, Comparison comparison) {
        List<String> clauses = new ArrayList<>();
        if (!comparison.better().isEmpty()) {
            clauses.add("better in " + names(comparison.better()));
        }
        if (!comparison.worse().isEmpty()) {
            clauses.add("worse in " + names(comparison.worse()));
        }
        return clauses.isEmpty() ? "" : than + String.join("; ", clauses) + ".";
    }

    private static String names(List<CriterionDifference> differences) {
        return differences.stream()
                .limit(CRITERIA)
                .map(CriterionDifference::criterion)
                .collect(Collectors.joining(", "));
    }

    private String value(Map<CriterionName, Double> values, CriterionName name) {
        Double value = values.get(name);
        return value == null
                ? NONE
                : ResultText.value(name, value, assessment.study().heading().currency());
    }

    private static String requirements(Appraisal appraisal) {
        if (appraisal.met().isEmpty()) {
            return "none asked";
        }
        List<String> missed =
                appraisal.met().stream()
                        .filter(m -> !m.met())
                        .map(RequirementMet::requirement)
                        .toList();
        return missed.isEmpty()
                ? "\u2713 meets all " + appraisal.met().size()
                : "\u2716 misses "
                        + missed.size()
                        + " of "
                        + appraisal.met().size()
                        + ": "
                        + String.join("; ", missed);
    }
}

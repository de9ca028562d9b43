package stillturning.report;

import java.util.List;
import stillturning.assess.PhaseVerdict;
import stillturning.assess.PhaseVerdicts;
import stillturning.assess.Verdict;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.TextTable.Cell;
import stillturning.report.TextTable.Column;
import stillturning.story.Moment;

/** One failure at every moment of the flight, as text. */
public final class PhaseTexts {

    /** How the tables are to be read; stands once above them. */
    public static final String READING =
            "The failure comes as a phase begins; the rest of the flight is flown as the study has"
                    + " it. How long the engine runs, by pilot; \"to the landing\" is long enough.";

    private PhaseTexts() {}

    /** Row by row in the order of the flight. */
    public static List<String> table(Study study, PhaseVerdicts of, TerminalColour paint) {
        TextTable table =
                new TextTable(
                        List.of(
                                Column.words("as this begins", 16),
                                Column.numbers("flight left", 10),
                                Column.words("outcome", 14),
                                Column.numbers("pilot as planned", 9),
                                Column.numbers("pilot late", 9),
                                Column.numbers("pilot never", 9),
                                Column.numbers("must act by", 8)));
        of.moments().forEach(one -> table.row(row(study, one)));
        return table.lines(paint);
    }

    private static List<Cell> row(Study study, PhaseVerdict one) {
        Verdict verdict = one.verdict();
        OutcomeMark mark = OutcomeMark.of(verdict.outcome());
        return List.of(
                new Cell(ElsewhereTable.when(one.moment())),
                new Cell(Formats.duration(secondsLeft(study, one.moment()))),
                new Cell(mark.word(), mark.ink()),
                new Cell(StoryFacts.endurance(verdict.planned())),
                new Cell(StoryFacts.endurance(verdict.late())),
                new Cell(StoryFacts.endurance(verdict.unaided())),
                new Cell(verdict.actBySeconds().map(Formats::lasting).orElse("-")));
    }

    /** Time from the beginning of the moment's phase to the landing (s). */
    public static double secondsLeft(Study study, Moment moment) {
        return study.aircraft().phases().stream()
                .dropWhile(phase -> !phase.name().equals(moment.phase()))
                .mapToDouble(Phase::seconds)
                .sum();
    }
}

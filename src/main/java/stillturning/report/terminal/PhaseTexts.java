package stillturning.report.terminal;

import static stillturning.report.table.Column.figures;
import static stillturning.report.table.Column.words;

import java.util.List;
import stillturning.assess.verdict.PhaseVerdict;
import stillturning.assess.verdict.PhaseVerdicts;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.OutcomeMark;
import stillturning.report.StoryFacts;
import stillturning.report.table.Column;
import stillturning.report.table.Table;
import stillturning.report.table.TerminalColour;
import stillturning.report.table.TextTable;
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
        List<Column<PhaseVerdict>> columns =
                List.of(
                        words("as this begins", 16, p -> ElsewhereTable.when(p.moment())),
                        figures(
                                "flight left",
                                10,
                                p -> Formats.duration(secondsLeft(study, p.moment()))),
                        Column.<PhaseVerdict>words("outcome", 14, p -> mark(p).word())
                                .ink(p -> mark(p).ink()),
                        figures(
                                "pilot as planned",
                                9,
                                p -> StoryFacts.endurance(p.verdict().planned())),
                        figures("pilot late", 9, p -> StoryFacts.endurance(p.verdict().late())),
                        figures("pilot never", 9, p -> StoryFacts.endurance(p.verdict().unaided())),
                        figures(
                                "must act by",
                                8,
                                p -> p.verdict().actBySeconds().map(Formats::lasting).orElse("-")));
        return TextTable.lines(new Table<>(columns, of.moments()), paint);
    }

    private static OutcomeMark mark(PhaseVerdict one) {
        return OutcomeMark.of(one.verdict().outcome());
    }

    /** Time from the beginning of the moment's phase to the landing (s). */
    public static double secondsLeft(Study study, Moment moment) {
        return study.aircraft().phases().stream()
                .dropWhile(phase -> !phase.name().equals(moment.phase()))
                .mapToDouble(Phase::seconds)
                .sum();
    }
}

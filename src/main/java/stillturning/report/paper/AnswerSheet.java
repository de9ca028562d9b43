package stillturning.report.paper;

import static stillturning.report.table.Column.words;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Study;
import stillturning.quantity.Formats;
import stillturning.report.AnswerWords;
import stillturning.report.Cautions;
import stillturning.report.EventLines;
import stillturning.report.LeaderFirmness;
import stillturning.report.PrintedNames;
import stillturning.report.Reasons;
import stillturning.report.UntoldTexts;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.oneline.SmallDrawing;
import stillturning.report.page.Block;
import stillturning.report.page.Block.Drawing;
import stillturning.report.page.Block.Facts;
import stillturning.report.page.Block.Grid;
import stillturning.report.page.Block.Heading;
import stillturning.report.page.Block.Lead;
import stillturning.report.page.Block.Note;
import stillturning.report.page.Block.Points;
import stillturning.report.page.Block.Room;
import stillturning.report.page.Block.Warning;
import stillturning.report.page.Block.Words;
import stillturning.report.page.Page.Fact;

/** The first page: question, answer, why, how firm, and what it still breaks. */
final class AnswerSheet {

    /** So many fit on the page. */
    private static final int SHOWN = 8;

    private static final int FIRMNESS = 3;
    private static final Room GLANCE = new Room(125, 42);

    private final Standpoint from;
    private final Assessment assessment;
    private final FirstAnswer first;
    private final List<Block> blocks = new ArrayList<>();

    AnswerSheet(Standpoint from, FirstAnswer first) {
        this.from = from;
        this.first = first;
        this.assessment = from.assessment();
    }

    List<Block> blocks() {
        blocks.add(new Note(assessment.study().heading().about()));
        blocks.add(new Words(AnswerWords.QUESTION));
        blocks.add(new Lead(first.lead()));
        assessment.ranking().ifPresent(this::answer);
        from.chosen().ifPresent(chosen -> blocks.add(glance(chosen)));
        from.chosen().ifPresent(this::stillBreaks);
        untold();
        asked();
        blocks.add(new Warning("Before you use this", cautions()));
        return List.copyOf(blocks);
    }

    private List<String> cautions() {
        return assessment.study().heading().invented()
                ? List.of(Cautions.inFull(true).get(0), Cautions.SHORT)
                : List.of(Cautions.SHORT);
    }

    private Block glance(Appraisal chosen) {
        return new Drawing(
                OneLine.of(SmallDrawing.of("chosen", chosen.candidate(), assessment.study())),
                GLANCE);
    }

    private void asked() {
        Study study = assessment.study();
        blocks.add(new Heading("What was asked"));
        blocks.add(
                new Facts(
                        List.of(
                                new Fact("the engine needs", needs(study)),
                                new Fact(
                                        "it stops without that after",
                                        EventLines.time(
                                                study.aircraft().engine().toleratedSeconds())),
                                new Fact(
                                        "time to land",
                                        Formats.duration(study.goals().enoughSeconds())
                                                + " from "
                                                + study.goals().countsFrom().words()
                                                + ", failing in "
                                                + study.goals().failurePhase().name()),
                                new Fact("compared", compared()))));
    }

    private String needs(Study study) {
        String needs = study.aircraft().engine().logic().inWords();
        return from.chosen().map(chosen -> from.labels(chosen).in(needs)).orElse(needs);
    }

    private String compared() {
        return from.ranked().size()
                + " candidates, "
                + from.ranked().stream().mapToInt(a -> a.singles().size()).sum()
                + " single failures played one by one";
    }

    private void answer(RankingResult ranking) {
        blocks.add(new Words(AnswerWords.why(assessment)));
        blocks.add(new Heading("How firm that is"));
        List<String> firm = new ArrayList<>();
        ranking.robustness().shares().stream()
                .filter(s -> s.name().equals(ranking.leader().name()) && !s.byRank().isEmpty())
                .forEach(
                        s ->
                                firm.add(
                                        "Of all ways to weigh the criteria, "
                                                + Formats.percent(s.byRank().get(0))
                                                + " put it first."));
        LeaderFirmness.unseating(assessment, ranking).stream().limit(FIRMNESS).forEach(firm::add);
        firm.addAll(first.of(AnswerTopic.EQUAL_BATTERIES));
        blocks.add(new Points(firm));
        if (from.ranked().size() > 1) {
            Appraisal second = from.ranked().get(1);
            blocks.add(
                    new Heading(
                            "What the next best, \"" + second.candidate().title() + "\", buys"));
            blocks.add(new Words(new Reasons(assessment, ranking).of(second.candidate().id())));
        }
    }

    private void stillBreaks(Appraisal chosen) {
        blocks.add(
                new Heading(
                        "What \"" + chosen.candidate().title() + "\" still breaks or cannot do"));
        List<Verdict> grave = Standpoint.needingSomebody(chosen);
        List<Verdict> own = chosen.engineOwn();
        PrintedNames labels = from.labels(chosen);
        blocks.add(new Points(first.of(AnswerTopic.BREAKS).stream().map(labels::in).toList()));
        if (!grave.isEmpty()) {
            blocks.add(
                    Grid.of(
                            grave.stream().limit(SHOWN).toList(),
                            List.of(
                                    words("single failure", 34, v -> labels.of(v.failure())),
                                    words("what it does", 66, VerdictWords::sentence))));
            if (grave.size() > SHOWN) {
                blocks.add(new Note((grave.size() - SHOWN) + " more: see \"Single points\"."));
            }
        }
        if (!own.isEmpty()) {
            blocks.add(
                    new Note(
                            own.size()
                                    + " failures of what the engine cannot do without stop it in"
                                    + " every candidate and are counted against none."));
        }
    }

    private void untold() {
        List<String> findings =
                from.ranked().stream()
                        .flatMap(
                                a ->
                                        UntoldTexts.findings(a).stream()
                                                .map(f -> a.candidate().title() + ": " + f))
                        .toList();
        if (!findings.isEmpty()) {
            blocks.add(
                    new Warning(UntoldTexts.HEADING, findings.stream().limit(FIRMNESS).toList()));
        }
    }
}

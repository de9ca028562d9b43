package stillturning.report.paper;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.assess.exchange.Group;
import stillturning.assess.verdict.Verdict;
import stillturning.model.goal.ComplexityCount;
import stillturning.report.PrintedNames;
import stillturning.report.RankingOrder;
import stillturning.report.ReportSamples;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstQuestion;
import stillturning.report.page.Block;
import stillturning.report.page.Document;
import stillturning.report.page.Document.Chapter;
import stillturning.report.pair.PairQuestion;
import stillturning.report.paper.PaperContents.Edition;
import stillturning.report.table.TerminalColour;
import stillturning.report.terminal.BlockText;

class CounsellorPaperTest {

    private static final int STORIES = 2;
    private static final Assessment ASSESSMENT = ReportSamples.assessment();
    private static final FirstAnswer FIRST =
            new FirstQuestion(
                            ASSESSMENT,
                            EqualBatteries.of(ASSESSMENT, done -> {}),
                            Optional.empty(),
                            Optional.empty(),
                            List.of(new LeftOut("half-drawn.yaml", "no source")))
                    .answer();
    private static final PairQuestion PAIR = ReportSamples.firstTwo(ASSESSMENT);
    private static final PaperContents CONTENTS =
            new PaperContents(
                    new Edition("2030-06-15", "v1", STORIES),
                    ReportSamples.sources(),
                    FIRST,
                    Optional.of(PAIR),
                    List.of(),
                    List.of(),
                    Optional.empty(),
                    List.of());
    private static final Document DOCUMENT = CounsellorPaper.of(ASSESSMENT, CONTENTS);

    private static String text(List<Block> blocks) {
        return String.join(" ", BlockText.lines(blocks, TerminalColour.NONE))
                .replaceAll("\\s+", " ");
    }

    private static List<Block> blocks(String anchor) {
        return Stream.concat(DOCUMENT.front().stream(), DOCUMENT.chapters().stream())
                .filter(chapter -> chapter.anchor().equals(anchor))
                .flatMap(chapter -> chapter.blocks().stream())
                .toList();
    }

    private static Appraisal leader() {
        return RankingOrder.of(ASSESSMENT).get(0);
    }

    @Test
    void twoPagesStandBeforeTheChaptersInTheirOrder() {
        assertEquals(
                "answer side-by-side",
                DOCUMENT.front().stream().map(Chapter::anchor).collect(Collectors.joining(" ")));
        assertEquals(
                "requirements pair complexity weak-points cases stories layout causes loads sizes"
                        + " probability assumptions not-analysed cautions",
                DOCUMENT.chapters().stream()
                        .map(Chapter::anchor)
                        .filter(anchor -> !anchor.equals("rationale"))
                        .collect(Collectors.joining(" ")));
    }

    @Test
    void theFirstPageSaysWhatTheLeaderStillBreaks() {
        String answer = text(blocks("answer"));
        assertTrue(answer.contains(leader().candidate().title()), answer);
        List<Verdict> grave = Standpoint.needingSomebody(leader());
        assertFalse(grave.isEmpty(), "the sample is to have a weak leader");
        String count = grave.size() > 8 ? grave.size() - 8 + " more" : "what it does";
        assertTrue(answer.contains(count), answer);
        assertTrue(answer.contains("still breaks or cannot do"), answer);
        assertFalse(FIRST.of(AnswerTopic.BREAKS).isEmpty());
        PrintedNames labels = new PrintedNames(leader().candidate());
        FIRST.of(AnswerTopic.BREAKS)
                .forEach(said -> assertTrue(answer.contains(labels.in(said)), said));
    }

    @Test
    void theFirstIsHeldAgainstTheNextLikeForLike() {
        String pair = text(blocks("pair"));
        Assessment two = PAIR.two();
        assertEquals(
                List.of(leader().candidate(), RankingOrder.of(ASSESSMENT).get(1).candidate()),
                two.appraisals().stream().map(Appraisal::candidate).toList());
        two.appraisals().forEach(a -> assertTrue(pair.contains(a.candidate().title()), pair));
        assertTrue(pair.contains("all " + PAIR.mixes().mixes().size() + " mixes"), pair);
        PAIR.mixes()
                .shares()
                .forEach(s -> assertTrue(pair.contains(Group.words(s.together())), pair));
    }

    @Test
    void whatComplexityCountsAndWhatThePilotDoesIsTold() {
        String complexity = text(blocks("complexity"));
        for (ComplexityCount count : ComplexityCount.values()) {
            assertTrue(complexity.contains(count.words()), count.words());
        }
        leader().measures().pilot().tasks().stream()
                .map(task -> task.name().replace('-', ' '))
                .forEach(label -> assertTrue(complexity.contains(label), complexity));
        assertEquals(
                text(blocks("complexity")),
                text(CounsellorPaper.decision(ASSESSMENT, CONTENTS).get(1).blocks()));
    }

    @Test
    void theFirstPageSaysWhatEqualBatteriesChange() {
        String answer = text(blocks("answer"));
        assertFalse(FIRST.of(AnswerTopic.EQUAL_BATTERIES).isEmpty());
        assertTrue(answer.contains(FIRST.lead()), answer);
        FIRST.of(AnswerTopic.EQUAL_BATTERIES)
                .forEach(said -> assertTrue(answer.contains(said), answer));
    }

    @Test
    void whoIsLeftOutStandsOnTheSecondPageWithTheReason() {
        String side = text(blocks("side-by-side"));
        assertTrue(side.contains("Left out: half-drawn.yaml: no source"), side);
    }

    @Test
    void theSecondPageHoldsEveryCandidateTheDateAndARoomToSign() {
        String side = text(blocks("side-by-side"));
        ASSESSMENT
                .appraisals()
                .forEach(a -> assertTrue(side.contains(a.candidate().title()), side));
        assertTrue(side.contains("2030-06-15") && side.contains("v1"), side);
        assertTrue(blocks("side-by-side").stream().anyMatch(Block.Blanks.class::isInstance));
    }

    @Test
    void everySinglePointHasARemedyAndWhereItIsAtWork() {
        List<List<String>> rows =
                blocks("weak-points").stream()
                        .filter(Block.Grid.class::isInstance)
                        .flatMap(block -> ((Block.Grid) block).table().cells().stream())
                        .toList();
        assertFalse(rows.isEmpty(), "no single point in the sample");
        rows.forEach(row -> assertFalse(row.get(2).isBlank() || row.get(3).isBlank(), "" + row));
    }

    @Test
    void noMoreStoriesThanAsked() {
        long headings = blocks("stories").stream().filter(Block.Heading.class::isInstance).count();
        assertEquals(STORIES, headings);
    }

    @Test
    void aPersonReadsLabels() {
        PrintedNames labels = new PrintedNames(leader().candidate());
        leader().candidate().parts().stream()
                .filter(part -> part.id().indexOf('-') > 0)
                .forEach(
                        part ->
                                assertEquals(
                                        part.tag().label() + ": open.",
                                        labels.in(part.id() + ": open.")));
        assertEquals("a half-full battery", labels.in("a half-full battery"));
    }

    @Test
    void checklistsHoldEveryMoveInTheOrderInWhichItWasPlayed() {
        String steps =
                DOCUMENT.cards().stream()
                        .filter(card -> card.anchor().equals("checklists"))
                        .flatMap(card -> card.blocks().stream())
                        .filter(Block.Boxes.class::isInstance)
                        .flatMap(block -> ((Block.Boxes) block).steps().stream())
                        .collect(Collectors.joining("; "));
        assertTrue(leader().masterOff().isPresent(), "the sample has a drill");
        int at = -1;
        for (var move : leader().candidate().cockpit().masterOff().entrySet()) {
            String lever = move.getKey().replace('-', ' ');
            String step = lever.substring(1) + ": " + move.getValue();
            assertTrue(steps.indexOf(step) > at, step + " in " + steps);
            at = steps.indexOf(step);
        }
    }

    @Test
    void everyCardSaysWhatItBelongsTo() {
        assertTrue(!DOCUMENT.cards().isEmpty(), "the sample has cards");
        DOCUMENT.cards()
                .forEach(
                        card -> {
                            Block.Note first = (Block.Note) card.blocks().get(0);
                            assertTrue(
                                    first.text().endsWith(leader().candidate().title()),
                                    first.text());
                        });
    }

    @Test
    void whatNoProcedureAnswersIsSaidOnTheCardWithWhatWasPlayedAndWhatItWouldNeed() {
        List<Block> card =
                DOCUMENT.cards().stream()
                        .filter(c -> c.anchor().equals("checklists"))
                        .findFirst()
                        .orElseThrow()
                        .blocks();
        List<String> missing =
                card.stream()
                        .filter(Block.Heading.class::isInstance)
                        .map(block -> ((Block.Heading) block).words())
                        .filter(words -> words.contains(": no checklist"))
                        .toList();
        assertTrue(missing.stream().anyMatch(w -> w.startsWith("Over-voltage")), missing + "");
        assertTrue(missing.stream().anyMatch(w -> w.startsWith("Engine stops")), missing + "");
        String all = card.toString();
        assertEquals(
                missing.size(), all.split("A procedure in the study would need", -1).length - 1);
        assertTrue(all.contains("still fed: ") || all.contains("No load goes out at once"), all);
    }

    @Test
    void theFrontOfThePageIsTheFrontOfThePaper() {
        assertEquals(
                text(DOCUMENT.front().get(0).blocks()),
                text(CounsellorPaper.front(ASSESSMENT, CONTENTS).get(0).blocks()));
    }
}

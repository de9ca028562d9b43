package stillturning.report.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.report.page.Document.Chapter;
import stillturning.report.record.RecordedCandidate.Day;
import stillturning.report.record.RecordedCandidate.ReadingVerdict;
import stillturning.report.record.RecordedCandidate.RecordRow;
import stillturning.report.record.RecordedCandidate.ShownPrediction;
import stillturning.report.table.TerminalColour;
import stillturning.report.terminal.BlockText;

/** The chapter on what was measured. */
class RecordedChapterTest {

    private static final Day FIRST = new Day("2026-05-17", "me", true);
    private static final Day SECOND = new Day("2026-05-20", "", false);

    private static RecordRow step(Day day, String what, String verdict) {
        boolean done = !verdict.equals("not done");
        return new RecordRow(
                day,
                "ground-test." + what + ".result",
                "pull " + what,
                done ? verdict : "",
                new ShownPrediction("", ""),
                new ReadingVerdict(verdict, verdict.equals("passed")));
    }

    private static RecordRow volts(Day day, String volts, boolean good) {
        return new RecordRow(
                day,
                "volts.bus",
                "voltage of bus",
                volts,
                new ShownPrediction("12.4 V", "12.1 V to 12.6 V"),
                new ReadingVerdict(good ? "keeps to it" : "does not keep to it", good));
    }

    private static String told(List<RecordRow> rows, List<String> unreadable) {
        List<Chapter> chapters =
                RecordedChapter.of(List.of(new RecordedCandidate("One bus", rows, unreadable)));
        assertEquals(1, chapters.size());
        return String.join("\n", BlockText.lines(chapters.get(0).blocks(), TerminalColour.NONE));
    }

    @Test
    void theLastResultOfEachStepCountsAndWhatWasNotRepeatedStays() {
        String told =
                told(
                        List.of(
                                step(FIRST, "a", "failed"),
                                step(FIRST, "b", "passed"),
                                step(FIRST, "c", "not done"),
                                volts(FIRST, "11.9 V", false),
                                step(SECOND, "a", "passed"),
                                step(SECOND, "b", "not done"),
                                step(SECOND, "c", "not done"),
                                volts(SECOND, "12.3 V", true)),
                        List.of());
        assertTrue(told.contains("of 3 steps 2 passed, 0 failed, 1 not done"), told);
        assertTrue(told.contains("2026-05-17 by me, 2026-05-20"), told);
        assertTrue(told.contains("12.3 V"), told);
        assertTrue(!told.contains("11.9 V"), told);
        assertTrue(told.contains("2026-05-17*"), told);
        assertTrue(told.contains("0 of 1 measured values do not keep"), told);
    }

    @Test
    void whatDoesNotKeepToItsPredictionIsCounted() {
        String told = told(List.of(volts(SECOND, "11.9 V", false)), List.of());
        assertTrue(told.contains("1 of 1 measured values does not keep"), told);
        assertTrue(!told.contains("has changed since"), told);
    }

    @Test
    void whatIsNoLongerAskedForIsToldAndNotCounted() {
        ReadingVerdict former = new ReadingVerdict(MeasuredWords.NO_LONGER, false);
        ShownPrediction none = new ShownPrediction("", "");
        String told =
                told(
                        List.of(
                                volts(SECOND, "12.3 V", true),
                                new RecordRow(
                                        FIRST, "loads.horn", "loads.horn", "2.9 A", none, former),
                                new RecordRow(
                                        FIRST, "x.result", "x.result", "passed", none, former)),
                        List.of());
        assertTrue(told.contains("0 of 1 measured values do not keep"), told);
        assertTrue(told.contains("loads.horn: 2.9 A (2026-05-17*); x.result: passed"), told);
        assertTrue(!told.contains("Ground test: of"), told);
    }

    @Test
    void aRecordThatCannotBeReadIsNotPassedOver() {
        assertTrue(told(List.of(), List.of("one-bus.yaml:1:1: spoilt")).contains("spoilt"));
    }

    @Test
    void whereNothingWasMeasuredThereIsNoChapter() {
        assertEquals(
                List.of(),
                RecordedChapter.of(
                        List.of(new RecordedCandidate("One bus", List.of(), List.of()))));
    }
}

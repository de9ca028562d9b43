package stillturning.report.terminal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assessment;
import stillturning.assess.verdict.Outcome;
import stillturning.report.FailureRows;
import stillturning.report.RankingOrder;
import stillturning.report.ReportSamples;
import stillturning.report.table.TerminalColour;

class TerminalTablesTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();

    @Test
    void tablesFitATerminalOf120Columns() {
        for (List<String> lines :
                List.of(
                        TerminalTables.ranking(ASSESSMENT, TerminalColour.NONE),
                        TerminalTables.rankingNotes(ASSESSMENT),
                        TerminalTables.requirements(ASSESSMENT, TerminalColour.NONE),
                        TerminalTables.matrix(
                                ASSESSMENT, Outcome.NO_EFFECT, TerminalColour.NONE))) {
            assertTrue(lines.stream().allMatch(l -> l.length() <= 120), String.join("\n", lines));
        }
    }

    @Test
    void rankingStartsWithTheLeader() {
        String leader = RankingOrder.of(ASSESSMENT).get(0).candidate().title();
        List<String> lines = TerminalTables.ranking(ASSESSMENT, TerminalColour.NONE);
        int rule = 0;
        while (!lines.get(rule).startsWith("--")) {
            rule++;
        }
        assertTrue(lines.get(rule + 1).contains(leader), String.join("\n", lines));
    }

    @Test
    void missedRequirementsSaySoWithTheirReason() {
        String text =
                String.join("\n", TerminalTables.requirements(ASSESSMENT, TerminalColour.NONE));
        assertTrue(text.contains("MISSED"), text);
        assertTrue(text.contains("met"), text);
        assertTrue(text.contains("it runs on for"), text);
    }

    @Test
    void matrixCodesStandInTheColumnOfTheirCandidate() {
        List<String> lines =
                TerminalTables.matrix(ASSESSMENT, Outcome.REDUNDANCY_LOST, TerminalColour.NONE);
        int column =
                RankingOrder.of(ASSESSMENT).get(0).candidate().id().equals("engine-bus") ? 1 : 2;
        int at = lines.get(0).indexOf("(" + column + ")");
        String row =
                lines.stream()
                        .filter(l -> l.startsWith("engine-diode: open"))
                        .findFirst()
                        .orElse("");
        assertEquals("STOPS", row.substring(at, Math.min(row.length(), at + 5)), row);
        assertFalse(lines.stream().anyMatch(l -> l.endsWith(" ")));
    }

    @Test
    void milderFailuresAreCountedAndAllAreThereWhenAsked() {
        List<String> some =
                TerminalTables.matrix(ASSESSMENT, Outcome.REDUNDANCY_LOST, TerminalColour.NONE);
        List<String> all =
                TerminalTables.matrix(ASSESSMENT, Outcome.NO_EFFECT, TerminalColour.NONE);
        assertTrue(some.stream().anyMatch(l -> l.contains("further failures, at worst")));
        assertFalse(all.stream().anyMatch(l -> l.contains("further failures")));
        for (FailureRows.FailureRow row : FailureRows.of(RankingOrder.of(ASSESSMENT))) {
            assertTrue(all.stream().anyMatch(l -> l.startsWith(row.failure())), row.failure());
        }
    }

    @Test
    void legendExplainsEveryCode() {
        List<String> lines =
                TerminalTables.matrix(ASSESSMENT, Outcome.NO_EFFECT, TerminalColour.NONE);
        for (Outcome outcome : Outcome.values()) {
            assertTrue(lines.stream().anyMatch(l -> l.endsWith(outcome.words())), outcome.words());
        }
    }
}

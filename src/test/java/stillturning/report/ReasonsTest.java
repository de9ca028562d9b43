package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Alternative;
import stillturning.assess.ranking.Criterion;
import stillturning.assess.ranking.GateVerdict;
import stillturning.assess.ranking.Ranking;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Scale;
import stillturning.assess.ranking.Sense;
import stillturning.report.table.TerminalColour;
import stillturning.report.terminal.TerminalTables;

class ReasonsTest {

    private static final Assessment NOTHING_KNOWN =
            new Assessment(ReportSamples.study("t", "a"), List.of(), List.of(), Optional.empty());

    private static final List<Criterion> CRITERIA =
            List.of(
                    new Criterion(
                            "endurance without charging",
                            Sense.MORE_IS_BETTER,
                            1,
                            Scale.straight(2000, 9000)),
                    new Criterion("weight", Sense.LESS_IS_BETTER, 2, Scale.straight(12, 8)));

    private static Alternative candidate(
            String name, double seconds, double kilograms, int missed) {
        List<GateVerdict> gates = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            gates.add(new GateVerdict("gate " + i, i >= missed, "why " + i));
        }
        return new Alternative(name, List.of(seconds, kilograms), gates);
    }

    private static String reason(String of, Alternative... candidates) {
        RankingResult ranking = Ranking.of(CRITERIA, List.of(candidates));
        return new Reasons(NOTHING_KNOWN, ranking).of(of);
    }

    @Test
    void aFirstThatAloneMeetsEverythingSaysSo() {
        String reason = reason("a", candidate("a", 3000, 10, 0), candidate("b", 2000, 12, 1));
        assertTrue(reason.startsWith("Meets every requirement, as the only one; ahead"), reason);
    }

    @Test
    void aFirstThatMeetsAllAsAnotherDoesStandsByItsPoints() {
        String reason = reason("a", candidate("a", 3000, 10, 0), candidate("b", 2000, 12, 0));
        assertTrue(
                reason.startsWith(
                        "Meets every requirement, as \"b\" does, and has more points; ahead"),
                reason);
    }

    @Test
    void aFirstThatMissesAsManyAsOthersDoesNotClaimThatTheyMissMore() {
        String reason =
                reason(
                        "a",
                        candidate("a", 3000, 10, 1),
                        candidate("b", 2000, 12, 1),
                        candidate("c", 2000, 11, 1),
                        candidate("d", 9000, 9, 2));
        assertTrue(
                reason.startsWith(
                        "Misses \"gate 0\" (why 0), as many as 2 others do, and has more points;"),
                reason);
        assertFalse(reason.contains("misses more"), reason);
    }

    @Test
    void aFirstThatMissesFewestSaysSo() {
        String reason = reason("a", candidate("a", 3000, 10, 2), candidate("b", 4000, 8, 3));
        assertTrue(
                reason.startsWith(
                        "Misses \"gate 0\" (why 0) and \"gate 1\" (why 1); every other misses more;"),
                reason);
    }

    @Test
    void twoThatNothingTellsApartHaveNoFewerPointsThanEachOther() {
        Alternative a = candidate("a", 3000, 10, 0);
        Alternative b = candidate("b", 3000, 10, 0);
        assertEquals(
                "Meets every requirement, as \"b\" does, and has no fewer points.",
                reason("a", a, b));
        assertEquals(
                "Meets every requirement, as \"a\" does, and has no fewer points.",
                reason("b", a, b));
    }

    @Test
    void theOnlyCandidateIsComparedWithNobody() {
        assertEquals("Meets every requirement.", reason("a", candidate("a", 3000, 10, 0)));
        assertEquals("Misses \"gate 0\" (why 0).", reason("a", candidate("a", 3000, 10, 1)));
    }

    @Test
    void differencesThatReadAlikeAreNotNamed() {
        Alternative first = candidate("a", 2161, 10, 0);
        Alternative second = candidate("b", 2160.5, 12, 0);
        assertEquals(
                "Meets every requirement, as \"b\" does, and has more points;"
                        + " ahead of \"b\" in weight (10.00 kg against 12.00 kg).",
                reason("a", first, second));
        String why = reason("b", first, second);
        assertFalse(why.contains("36 min against 36 min"), why);
    }

    @Test
    void aCandidateBehindByNothingThatShowsStillGetsASentence() {
        assertEquals(
                "Behind \"a\" by less than figures show.",
                reason("b", candidate("a", 2161, 10, 0), candidate("b", 2162, 10.001, 0)));
    }

    @Test
    void theReferenceIsNamedOnceInASentence() {
        String why = reason("b", candidate("a", 3000, 10, 0), candidate("b", 4000, 12, 0));
        assertEquals(
                "Ahead of \"a\" in endurance without charging (1 h 6 min against 50 min); behind it"
                        + " in weight (12.00 kg against 10.00 kg).",
                why);
    }

    @Test
    void theLongReasonNamesAFewCulpritsAndCountsTheRest() {
        RequirementMet missed =
                new RequirementMet("r", false, "5 of 9 do", List.of("a", "b", "c", "d", "e"));
        assertEquals("5 of 9 do: a; b; c; and 2 more", missed.reasonInFull());
        assertEquals("fine", new RequirementMet("r", true, "fine", List.of()).reasonInFull());
    }

    @Test
    void enduranceIsRoundedDownInTheRankingAsInTheRequirements() {
        Assessment assessment = ReportSamples.assessment();
        String ranking = String.join("\n", TerminalTables.ranking(assessment, TerminalColour.NONE));
        assessment
                .appraisals()
                .forEach(
                        a -> {
                            String reason = a.met().get(2).reason();
                            String endurance =
                                    reason.replace("it runs on for ", "").replaceAll(",.*", "");
                            assertTrue(ranking.contains(endurance), reason + "\n" + ranking);
                        });
    }
}

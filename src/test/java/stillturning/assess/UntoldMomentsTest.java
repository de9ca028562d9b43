package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.verdict.Lazy;
import stillturning.assess.verdict.LeftSwitch;
import stillturning.assess.verdict.Outcome;
import stillturning.files.StudyReader;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.report.UntoldTexts;
import stillturning.report.terminal.OtherFindings;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;

/** What cannot be computed beside the failures counts on the cautious side too. */
class UntoldMomentsTest {

    private static final Assessment ISOLATOR =
            Assess.of(
                    StudyReader.read(
                                    Path.of(
                                            "src",
                                            "test",
                                            "resources",
                                            "stillturning",
                                            "cases",
                                            "isolator"))
                            .study()
                            .orElseThrow());

    private static final LeftSwitch LEFT =
            new LeftSwitch(
                    new Misplaced("master", "on", "off"),
                    false,
                    List.of(),
                    Optional.empty(),
                    Optional.of("at 0.0 s: currents at converter are off by 2 A"));

    private static final StartAttempt START =
            new StartAttempt(
                    "as stated",
                    false,
                    0.2,
                    150,
                    Map.of(),
                    List.of(),
                    List.of(
                            new StoryEvent(
                                    0.2,
                                    StoryEvent.Kind.UNTOLD,
                                    "engine",
                                    "cannot be told on: currents at starter are off by 2 A",
                                    -1)));

    /** It must not count as a switch that shows before the flight. */
    @Test
    void aLeftSwitchIsALostEngineOfWhichNothingShows() {
        assertFalse(LEFT.shows());
        assertEquals(Optional.of(Outcome.ENGINE_LOST), LEFT.outcome());
    }

    @Test
    void aStartCountsAsFailedWithItsReason() {
        assertFalse(START.runs());
        assertTrue(START.untold().orElseThrow().contains("starter"));
    }

    /** Both are listed at the candidate, each with the part. */
    @Test
    void bothAreNamedAtTheCandidate() {
        Appraisal of = ISOLATOR.appraisals().get(0);
        Appraisal.Cases cases =
                new Appraisal.Cases(
                        of.cases().masterOff(),
                        of.cases().chargingLost(),
                        of.cases().lasting(),
                        List.of(LEFT),
                        List.of(START),
                        Lazy.of(List.of()));
        Appraisal with =
                new Appraisal(
                        of.candidate(),
                        of.flight(),
                        of.singles(),
                        cases,
                        of.structure(),
                        of.measures(),
                        of.met());
        List<String> found = UntoldTexts.findings(with);
        assertEquals(2, found.size());
        assertTrue(found.get(0).startsWith("master left off: "), found.get(0));
        assertTrue(found.get(0).contains("converter"), found.get(0));
        assertTrue(found.get(1).contains("starter"), found.get(1));
        assertEquals(List.of(), UntoldTexts.findings(of));
        assertTrue(
                OtherFindings.leftSwitches(with).get(0).value().contains("counts as engine lost"));
    }
}

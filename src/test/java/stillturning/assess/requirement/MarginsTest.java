package stillturning.assess.requirement;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assess;
import stillturning.assess.PilotBurden;
import stillturning.assess.Scrutiny;
import stillturning.assess.verdict.Verdict;
import stillturning.files.StudyReader;
import stillturning.model.Burdens;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.story.StartAttempt;

/** How far from a limit, in volts, seconds or failures, and what comes nearest to it. */
class MarginsTest {

    private static final Study SMALL =
            StudyReader.read(Path.of("architectures/first-steps")).study().orElseThrow();

    private static Appraisal two;

    @BeforeAll
    static void assess() {
        two = Assess.of(SMALL).of("bus-and-battery").orElseThrow();
    }

    /** What was found of a candidate, with other starts. */
    private record Given(List<Verdict> singles, Restarts restarts, Optional<StartAttempt> cold)
            implements Evidence {
        @Override
        public Optional<Verdict> masterOff() {
            return Optional.empty();
        }

        @Override
        public Verdict chargingLost() {
            return two.chargingLost();
        }

        @Override
        public Burdens burdens() {
            return two.measures().burdens();
        }

        @Override
        public PilotBurden pilot() {
            return two.measures().pilot();
        }

        @Override
        public Optional<StartAttempt> coldStart() {
            return cold;
        }

        @Override
        public Optional<List<String>> departures() {
            return Optional.empty();
        }

        @Override
        public Optional<RequirementMet> surveyed(Requirement requirement) {
            return Optional.empty();
        }
    }

    private static RequirementMet met(
            Requirement requirement, List<Verdict> singles, Restarts restarts, StartAttempt cold) {
        return new Requirements(SMALL, new Given(singles, restarts, Optional.of(cold)))
                .check(requirement);
    }

    private static RequirementMet met(Requirement requirement, List<Verdict> singles) {
        return met(requirement, singles, Restarts.failing(List.of()), start(7.4, 9.5));
    }

    // first-steps: the computer needs 7 V, the pump 8 V
    private static StartAttempt start(double computerVolts, double pumpVolts) {
        return new StartAttempt(
                "cold",
                true,
                2,
                100,
                Map.of("computer", computerVolts, "pump", pumpVolts),
                List.of(),
                List.of());
    }

    @Test
    void aColdStartSaysHowFarAboveItsMinimumTheWeakestLoadStays() {
        Requirement cold = new Requirement.StartsCold();
        assertEquals(
                "down to 7.4 V at computer, 0.4 V more than it needs",
                met(cold, List.of()).margin());
        assertEquals(
                "down to 7.0 V at pump, 1.0 V less than it needs",
                met(cold, List.of(), Restarts.failing(List.of()), start(7.4, 7)).margin());
    }

    @Test
    void restartsSayTheFailureAfterWhichTheStartIsHardest() {
        Restarts hard =
                new Restarts(
                        List.of(), Optional.of(new Restarts.Hardest("a: open", start(9, 8.5))));
        RequirementMet found =
                met(new Requirement.RestartsInFlight(), List.of(), hard, start(9, 9));
        assertTrue(found.met());
        assertEquals(
                "the hardest start (a: open) takes 2.0 s, down to 8.5 V at pump, 0.5 V more than it"
                        + " needs",
                found.margin());
        StartAttempt windmilling =
                new StartAttempt("a: open", true, 3, 0, Map.of(), List.of(), List.of());
        assertEquals(
                "none takes longer than 3.0 s (a: open)",
                met(
                                new Requirement.RestartsInFlight(),
                                List.of(),
                                new Restarts(
                                        List.of(),
                                        Optional.of(new Restarts.Hardest("a: open", windmilling))),
                                windmilling)
                        .margin());
        assertEquals(
                "2 too many",
                met(
                                new Requirement.RestartsInFlight(),
                                List.of(),
                                Restarts.failing(List.of("a: open", "b: open")),
                                start(9, 9))
                        .margin());
    }

    @Test
    void theHardestStartCountsFromTheKey() throws Exception {
        Restarts all =
                Scrutiny.of(SMALL, SMALL.candidate("bus-and-battery").orElseThrow(), Survey.NONE)
                        .restarts();
        StartAttempt hardest = all.hardest().orElseThrow().start();
        // first-steps: restarts-in 3 s
        assertEquals(3, StartMargin.seconds(hardest), 0.1, hardest.toString());
    }

    @Test
    void noSingleFailureSaysHowLongWhatTheEngineNeedsIsMissingAtMost() {
        List<Verdict> harmless =
                two.singles().stream()
                        .filter(v -> v.planned().engine().stops() == 0 && v.inBand().isEmpty())
                        .toList();
        assertTrue(harmless.size() > 10);
        double longest =
                harmless.stream()
                        .mapToDouble(v -> v.planned().engine().longestInterruptionSeconds())
                        .max()
                        .orElseThrow();
        String margin = met(new Requirement.NoSingleFailureStopsEngine(), harmless).margin();
        String after = longest > 0 ? " it stops after 1000 ms" : "it would stop after 1000 ms";
        assertTrue(margin.contains(after), margin);
        assertTrue(
                longest == 0 || margin.contains("at most " + Math.round(1000 * longest) + " ms ("),
                margin);
    }

    @Test
    void aLoadThatIsNeverDarkSaysForHowManySecondsItIsAtMost() {
        List<Verdict> bright =
                two.singles().stream()
                        .filter(v -> !v.losses().otherLoads().contains("radio"))
                        .filter(v -> v.untold().isEmpty() && v.inBand().isEmpty())
                        .toList();
        assertTrue(bright.size() > 10);
        double longest =
                bright.stream()
                        .mapToDouble(v -> DarkSpells.longestSeconds(v.planned(), "radio"))
                        .max()
                        .orElseThrow();
        RequirementMet found =
                met(new Requirement.NoSingleFailureDarkens("radio", "radio"), bright);
        assertTrue(found.met(), found.toString());
        assertTrue(
                longest > 0
                        ? found.margin().startsWith("it is dark for at most ")
                        : found.margin().equals("it is dark for 0 s"),
                found.margin());
    }
}

package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Remark;
import stillturning.assess.verdict.Verdict;
import stillturning.model.CountsFrom;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.goal.Preferences;
import stillturning.story.Pilot;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.StateBar.StateSpan;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** The outcome of a failure says what the engine's own bar shows, in aircraft drawn by lot. */
class OutcomeOfStoryTest {

    /** Around the time for which the small batteries of these aircraft last (s). */
    private static final List<Double> ENOUGH = List.of(20.0, 120.0, 600.0);

    static LongStream seeds() {
        return LongStream.range(0, 80);
    }

    private static Study withEnough(Study study, double seconds, CountsFrom from) {
        Study.Goals goals = study.goals();
        return new Study(
                study.id(),
                study.heading(),
                study.aircraft(),
                new Study.Goals(
                        goals.failurePhase(),
                        seconds,
                        List.of(),
                        Preferences.of(List.of()),
                        Optional.empty(),
                        List.of(),
                        goals.runUp(),
                        from),
                study.candidates());
    }

    /** What it must outlast: the time to land, and no more than the whole plan (s). */
    private record Limits(CountsFrom from, double enough, double plan) {}

    /** What the engine did, from its bar alone. */
    private record Course(List<StateSpan> spans, double countsFromSeconds) {
        static Course of(Story story, CountsFrom from) {
            StateBar bar = story.bars().get(0);
            assertEquals("engine", bar.name());
            double sign = from == CountsFrom.FAILURE ? 0 : sign(story, bar.spans());
            return new Course(bar.spans(), sign);
        }

        /** The first cue, or the first 0.3 s without a running engine. */
        private static double sign(Story story, List<StateSpan> spans) {
            double sign =
                    story.of(StoryEvent.Kind.CUE).stream()
                            .mapToDouble(StoryEvent::seconds)
                            .min()
                            .orElse(Double.POSITIVE_INFINITY);
            double quietSince = Double.NaN;
            for (StateSpan span : spans) {
                if (span.doing() == Activity.RUNS) {
                    quietSince = Double.NaN;
                } else {
                    quietSince = Double.isNaN(quietSince) ? span.fromSeconds() : quietSince;
                    if (span.toSeconds() > quietSince + 0.3 || span.doing() == Activity.STOPPED) {
                        sign = Math.min(sign, quietSince + 0.3);
                    }
                }
            }
            return sign;
        }

        StateSpan last() {
            return spans.get(spans.size() - 1);
        }

        boolean endsStopped() {
            return last().doing() == Activity.STOPPED;
        }

        boolean lost(Limits limits) {
            double end = last().fromSeconds();
            return endsStopped()
                    && end - Math.min(end, countsFromSeconds) < limits.enough
                    && end < Math.max(limits.enough, limits.plan);
        }

        /** Whether it did anything but run before what it did last. */
        boolean disturbedBefore() {
            return spans.subList(0, spans.size() - 1).stream()
                    .anyMatch(span -> span.doing() != Activity.RUNS);
        }

        boolean stoppedAndRanAgain() {
            return spans.subList(0, spans.size() - 1).stream()
                    .anyMatch(span -> span.doing() == Activity.STOPPED);
        }
    }

    private static void assertAgrees(Verdict verdict, Pilot pilot, Limits limits, String where) {
        Outcome outcome = verdict.outcome(pilot);
        Course course = Course.of(verdict.with(pilot), limits.from);
        Course alone = Course.of(verdict.with(Pilot.NEVER), limits.from);
        String all = where + ": " + outcome + "\n" + course + "\n" + alone;
        assertEquals(course.lost(limits), outcome == Outcome.ENGINE_LOST, all);
        assertEquals(
                !course.lost(limits) && alone.lost(limits),
                outcome == Outcome.STOPS_UNTIL_PILOT_ACTS
                        || outcome == Outcome.STOPS_UNLESS_PILOT_ACTS,
                all);
        if (outcome == Outcome.STOPS_UNTIL_PILOT_ACTS) {
            assertTrue(course.stoppedAndRanAgain(), all);
        }
        if (outcome == Outcome.INTERRUPTED) {
            assertTrue(!course.endsStopped() && course.disturbedBefore(), all);
        }
        if (outcome.compareTo(Outcome.REDUNDANCY_LOST) > 0) {
            assertTrue(!course.endsStopped() && !course.stoppedAndRanAgain(), all);
        }
        boolean said =
                verdict.remarks(pilot).stream()
                        .anyMatch(remark -> remark.topic() == Remark.Topic.STOPS_LATER);
        assertEquals(course.endsStopped() && !course.lost(limits), said, all);
    }

    private static void eachVerdict(long seed, Check check) throws UntoldStory {
        RandomAircraft aircraft = new RandomAircraft(seed);
        Timeline timeline = aircraft.timeline(Double.POSITIVE_INFINITY);
        if (!timeline.normal().engineRuns()) {
            return; // refused before anything is judged
        }
        double plan =
                aircraft.study.aircraft().phases().stream().mapToDouble(p -> p.seconds()).sum();
        for (double enough : ENOUGH) {
            CountsFrom from = seed % 2 == 0 ? CountsFrom.FIRST_SIGN : CountsFrom.FAILURE;
            Judge judge = new Judge(withEnough(aircraft.study, enough, from), timeline);
            for (Failure failure : aircraft.failures) {
                check.of(
                        judge.typically(failure),
                        new Limits(from, enough, plan),
                        "seed " + seed + ", enough " + enough + ", " + failure.name());
            }
        }
    }

    private interface Check {
        void of(Verdict verdict, Limits limits, String where);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOutcomeSaysWhatTheEngineDoes(long seed) throws UntoldStory {
        eachVerdict(
                seed,
                (verdict, limits, where) -> {
                    for (Pilot pilot : Pilot.values()) {
                        assertAgrees(verdict, pilot, limits, where + ", " + pilot.words());
                    }
                });
    }

    @Test
    void theLotDrawsTheOutcomesThatItIsMeantFor() throws UntoldStory {
        Set<Outcome> seen = EnumSet.noneOf(Outcome.class);
        Set<Remark.Topic> said = EnumSet.noneOf(Remark.Topic.class);
        for (long seed : seeds().toArray()) {
            eachVerdict(
                    seed,
                    (verdict, limits, where) -> {
                        for (Pilot pilot : Pilot.values()) {
                            seen.add(verdict.outcome(pilot));
                            verdict.remarks(pilot).forEach(remark -> said.add(remark.topic()));
                        }
                    });
        }
        assertTrue(
                seen.containsAll(
                        EnumSet.of(
                                Outcome.ENGINE_LOST,
                                Outcome.STOPS_UNLESS_PILOT_ACTS,
                                Outcome.INTERRUPTED,
                                Outcome.REDUNDANCY_LOST)),
                seen.toString());
        assertTrue(said.contains(Remark.Topic.STOPS_LATER), said.toString());
    }
}

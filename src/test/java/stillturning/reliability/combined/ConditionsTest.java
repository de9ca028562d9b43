package stillturning.reliability.combined;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Effort;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.reliability.cutset.SetVerdict;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Sets brought to fewer changes against the same sets told as they are, exactly. */
class ConditionsTest {

    private static final Study SANDPIPER =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    private static SetVerdict plainly(Timeline exact, List<Event> events, int[] set) {
        List<Hit> hits = new ArrayList<>();
        Map<String, String> levers = new LinkedHashMap<>();
        Set<String> dark = new HashSet<>();
        boolean idle = false;
        for (int i : set) {
            dark.addAll(events.get(i).failure().dark());
            hits.addAll(events.get(i).failure().hits());
            levers.putAll(events.get(i).failure().levers());
            idle |= events.get(i).kind() == Event.EventKind.IDLE_PILOT;
        }
        try {
            Story story =
                    exact.tell(
                            new Failure("as it is", hits, levers, Set.of(), dark),
                            Setting.with(idle ? Pilot.NEVER : Pilot.PLANNED));
            return story.engine().misses(SANDPIPER.landing()) ? SetVerdict.LOST : SetVerdict.LIVES;
        } catch (UntoldStory e) {
            return SetVerdict.UNTOLD;
        }
    }

    /** Of each candidate so many sets, small ones and ones within a part and its neighbours. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "one-battery-main-bus",
                "one-battery-engine-bus",
                "split-batteries",
                "split-batteries-lithium",
                "solid-state",
                "solid-state-split-engine",
                "two-alternators"
            })
    void aSetComesToTheSameAsItsFewestChanges(String id) throws UntoldStory {
        Candidate candidate = SANDPIPER.candidate(id).orElseThrow();
        List<Event> events = CombinedFailures.events(candidate, List.of());
        SetTrial trial = CombinedFailures.trial(SANDPIPER, candidate, events);
        Timeline exact = new Timeline(SANDPIPER, candidate);
        SplittableRandom random = new SplittableRandom(id.hashCode());
        int lost = 0;
        for (int n = 0; n < Effort.cases(60, 250); n++) {
            int[] set = drawn(random, events.size(), n % 2 == 0);
            SetVerdict quickly = trial.of(set);
            if (quickly != SetVerdict.IMPOSSIBLE) {
                lost += quickly == SetVerdict.LOST ? 1 : 0;
                assertEquals(plainly(exact, events, set), quickly, () -> names(events, set));
            }
        }
        assertTrue(lost > 0, "sets that end the engine are among them");
    }

    /** Two or three events, anywhere or close to each other in the order of the parts. */
    private static int[] drawn(SplittableRandom random, int events, boolean close) {
        int first = random.nextInt(events);
        int reach = close ? Math.min(12, events) : events;
        return random
                .ints(random.nextBoolean() ? 1 : 2, 0, reach)
                .map(i -> close ? Math.min(events - 1, Math.max(0, first - 6 + i)) : i)
                .boxed()
                .collect(() -> new TreeSet<>(List.of(first)), Set::add, Set::addAll)
                .stream()
                .mapToInt(Integer::intValue)
                .toArray();
    }

    private static String names(List<Event> events, int[] set) {
        return Arrays.stream(set).mapToObj(i -> events.get(i).name()).toList().toString();
    }

    @Test
    void openingsOfOneChainAreOne() throws UntoldStory {
        Candidate candidate = SANDPIPER.candidate("split-batteries").orElseThrow();
        List<Event> events = CombinedFailures.events(candidate, List.of());
        SetTrial trial = CombinedFailures.trial(SANDPIPER, candidate, events);
        int breaker = number(events, "radio-breaker: opens for no reason");
        int wire = number(events, "radio-wire: open");
        int back = number(events, "radio-return: open");
        int stuck = number(events, "radio-breaker: does not open when it should");
        for (int one : new int[] {breaker, wire, back}) {
            trial.of(new int[] {one});
        }
        trial.of(new int[] {Math.min(breaker, wire), Math.max(breaker, wire)});
        trial.of(new int[] {Math.min(breaker, stuck), Math.max(breaker, stuck)});
        assertEquals(1, trial.stories());
    }

    private static int number(List<Event> events, String name) {
        for (int i = 0; i < events.size(); i++) {
            if (events.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new AssertionError("no event " + name);
    }
}

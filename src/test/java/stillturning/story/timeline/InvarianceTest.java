package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;
import stillturning.model.EngineLogic;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Part;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** What must not change a story: order of parts, names, step size, other stories. */
class InvarianceTest {

    private static final Tolerance COMPUTER = new Tolerance(8, 9, 0.005, 0.2, 17, 0.1);

    /** Two batteries, a contactor, protectors, a guard, a two-input computer, two procedures. */
    private static Bench bench(String mark) {
        return new Bench()
                .part(Shelf.lead(mark + "main-battery", 12, 0.02, 0.95))
                .join(mark + "main-battery", "minus", "ground", "stud")
                .part(Shelf.lithium(mark + "aux-battery", 4, 0.9, Shelf.LENIENT))
                .join(mark + "aux-battery", "minus", "ground", "stud")
                .part(Shelf.alternator(mark + "alternator", 14.2, 40, true))
                .join(mark + "alternator", "case", "ground", "stud")
                .part(Shelf.guard(mark + "guard", 15.8, 0.03))
                .join(mark + "guard", "minus", "ground", "stud")
                .part(Shelf.contactor(mark + "master", 0.015))
                .bus(mark + "main-bus", "feed")
                .bus(mark + "engine-bus")
                .diode(mark + "diode")
                .part(Shelf.fuse(mark + "fuse", 15))
                .part(breaker(mark + "breaker", 5))
                .part(breaker(mark + "field-breaker", 5))
                .wire(mark + "wire", 2, 0.03)
                .load(Shelf.twoInputs(mark + "computer", DemandKind.CONSTANT_POWER, 4))
                .load(mark + "pump", DemandKind.CONSTANT_CURRENT, 5, COMPUTER)
                .load(mark + "radio", DemandKind.CONSTANT_POWER, 3, Bench.HARDY)
                .load(
                        mark + "heater",
                        DemandKind.CONSTANT_RESISTANCE,
                        10,
                        new Tolerance(9, 10, 0.001, 0.2, 40, 1))
                .join(mark + "main-battery", "plus", mark + "master", "in")
                .join(mark + "master", "coil-plus", mark + "main-bus", "bar")
                .join(mark + "master", "coil-minus", "ground", "stud")
                .join(mark + "master", "out", mark + "main-bus", "feed")
                .join(mark + "alternator", "output", mark + "guard", "in")
                .join(mark + "guard", "out", mark + "main-bus", "bar")
                .join(mark + "main-bus", "bar", mark + "field-breaker", "in")
                .join(mark + "field-breaker", "out", mark + "alternator", "field")
                .join(mark + "main-bus", "bar", mark + "diode", "in")
                .join(mark + "diode", "out", mark + "engine-bus", "bar")
                .join(mark + "aux-battery", "plus", mark + "fuse", "in")
                .join(mark + "fuse", "out", mark + "engine-bus", "bar")
                .join(mark + "engine-bus", "bar", mark + "computer", "a")
                .join(mark + "main-bus", "bar", mark + "computer", "b")
                .join(mark + "engine-bus", "bar", mark + "pump", "plus")
                .join(mark + "main-bus", "bar", mark + "breaker", "in")
                .join(mark + "breaker", "out", mark + "wire", "a")
                .join(mark + "wire", "b", mark + "radio", "plus")
                .join(mark + "main-bus", "bar", mark + "heater", "plus")
                .engine(
                        EngineLogic.allOf(
                                List.of(
                                        new EngineLogic.One(mark + "computer"),
                                        new EngineLogic.One(mark + "pump"))),
                        true)
                .cue(
                        new Cue(
                                "alternator light",
                                new Cue.AlternatorOut(mark + "alternator"),
                                Optional.of(mark + "radio")))
                .cue(
                        "low volts",
                        new Cue.LowVolts(new Terminal(mark + "main-bus", "bar"), 12.5, 10))
                .procedure("shed", "alternator light", 45, Map.of(), mark + "heater")
                .procedure("radio off", "low volts", 120, Map.of(), mark + "radio");
    }

    private static Part breaker(String id, double amps) {
        return new Breaker(Bench.tag(id), amps, 0.02, ProtectorCurves.FAST_BREAKER);
    }

    private static List<Story> all(Timeline timeline, Candidate candidate) throws UntoldStory {
        List<Story> stories = new ArrayList<>();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            stories.add(timeline.tell(failure, Pilot.PLANNED));
        }
        return stories;
    }

    private static List<StoryEvent> byPart(Story story, String mark) {
        return story.happenings().stream()
                .sorted(
                        Comparator.comparing(
                                        (StoryEvent h) -> h.part().replace(mark, "") + h.kind())
                                .thenComparing(StoryEvent::seconds))
                .toList();
    }

    private static void assertSame(Story one, Story other, String mark) {
        List<StoryEvent> ones = byPart(one, mark);
        List<StoryEvent> others = byPart(other, mark);
        assertEquals(ones.size(), others.size(), one.failure().name() + others);
        for (int i = 0; i < ones.size(); i++) {
            StoryEvent a = ones.get(i);
            StoryEvent b = others.get(i);
            assertEquals(a.kind(), b.kind(), one.failure().name());
            assertEquals(a.part(), b.part().replace(mark, ""), one.failure().name());
            assertEquals(
                    a.seconds(), b.seconds(), 1e-6 * a.seconds() + 1e-8, one.failure() + "" + a);
        }
        assertEquals(one.engine().stops(), other.engine().stops());
    }

    @Test
    void theFixtureShowsEveryKindOfHappeningThatItIsMeantFor() throws UntoldStory {
        Bench bench = bench("");
        List<StoryEvent.Kind> seen =
                all(bench.timeline(), bench.candidate()).stream()
                        .flatMap(s -> s.happenings().stream())
                        .map(StoryEvent::kind)
                        .distinct()
                        .toList();
        assertTrue(
                seen.containsAll(
                        List.of(
                                StoryEvent.Kind.PROTECTOR_OPENS,
                                StoryEvent.Kind.CONTACTS_OPEN,
                                StoryEvent.Kind.LOAD_STOPS,
                                StoryEvent.Kind.LOAD_RESTARTS,
                                StoryEvent.Kind.BATTERY_EMPTY,
                                StoryEvent.Kind.SOURCE_STOPS,
                                StoryEvent.Kind.PILOT,
                                StoryEvent.Kind.ENGINE_STOPS)),
                seen.toString());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theOrderOfThePartsDoesNotMatter(long seed) throws UntoldStory {
        Bench bench = bench("");
        Candidate candidate = bench.candidate();
        List<Part> shuffled = new ArrayList<>(candidate.parts());
        Collections.shuffle(shuffled, new Random(seed));
        Candidate other =
                new Candidate("bench", "", "", shuffled, candidate.joins(), candidate.cockpit());
        Timeline first = bench.timeline();
        Timeline second = new Timeline(bench.study(), other);
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            assertSame(first.tell(failure, Pilot.PLANNED), second.tell(failure, Pilot.PLANNED), "");
        }
    }

    @Test
    void namesDoNotMatter() throws UntoldStory {
        Bench plain = bench("");
        Bench marked = bench("zz-");
        List<Story> first = all(plain.timeline(), plain.candidate());
        List<Story> second = all(marked.timeline(), marked.candidate());
        IntStream.range(0, first.size())
                .forEach(i -> assertSame(first.get(i), second.get(i), "zz-"));
    }

    @ParameterizedTest
    @ValueSource(doubles = {60, 7})
    void theStepDoesNotMatter(double longestStepSeconds) throws UntoldStory {
        Bench bench = bench("");
        List<Story> first = all(bench.timeline(), bench.candidate());
        Timeline careful =
                new Timeline(
                        bench.study(),
                        bench.candidate(),
                        Moment.heldIn("cruise"),
                        longestStepSeconds);
        List<Story> second = all(careful, bench.candidate());
        IntStream.range(0, first.size()).forEach(i -> assertSame(first.get(i), second.get(i), ""));
    }

    @Test
    void oneTimelineTellsTheSameToManyThreadsAtOnceAndAgain() throws UntoldStory {
        Bench bench = bench("");
        Timeline timeline = bench.timeline();
        List<Failure> failures = FailureCatalogue.singlesOf(bench.candidate());
        List<Story> alone = all(timeline, bench.candidate());
        for (int round = 0; round < 4; round++) {
            List<Story> together = failures.parallelStream().map(f -> told(timeline, f)).toList();
            assertEquals(alone, together);
        }
        assertEquals(alone, all(bench.timeline(), bench.candidate()));
    }

    private static Story told(Timeline timeline, Failure failure) {
        try {
            return timeline.tell(failure, Pilot.PLANNED);
        } catch (UntoldStory e) {
            throw new AssertionError(failure.name(), e);
        }
    }

    @Test
    void openingAPartTwiceTellsTheStoryOfOpeningItOnce() throws UntoldStory {
        Bench bench = bench("");
        Timeline timeline = bench.timeline();
        for (Failure failure : FailureCatalogue.singlesOf(bench.candidate())) {
            Hit hit = failure.hits().get(0);
            Failure twice = new Failure(failure.name(), List.of(hit, hit), Map.of());
            Story once = timeline.tell(failure, Pilot.PLANNED);
            Story again = timeline.tell(twice, Pilot.PLANNED);
            assertEquals(once.happenings(), again.happenings());
            assertEquals(once.engine(), again.engine());
        }
    }
}

package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.model.failure.Failure;
import stillturning.story.Endurance;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;

/** What must not change the stories of aircraft drawn by lot: order, and length of steps. */
class RandomInvarianceTest {

    private static final double HORIZON_SECONDS = 900;

    /**
     * What a time may be off, beside a nanosecond, where only the order differs. Mostly it is less
     * than 1e-9; but where a last digit decides whether a step is taken, all steps after it differ.
     */
    private static final double SAME = 1e-7;

    /**
     * ... and where the steps differ. Mostly it is less than 1e-7; but a step over the corner
     * between charging and discharging is off by more than it is estimated to be, and a voltage
     * that hardly falls makes much of that.
     */
    private static final double NEAR = 3e-6;

    static LongStream seeds() {
        return LongStream.range(0, 50);
    }

    /** A story, or why there is none, up to the first number in it. */
    private record Told(List<StoryEvent> happenings, List<Endurance> endurance, String refusal) {

        static Told of(RandomAircraft aircraft, Timeline timeline, Failure failure) {
            try {
                Story story = timeline.tell(failure, aircraft.setting, HORIZON_SECONDS);
                return new Told(story.happenings(), List.of(story.engine().endurance()), "");
            } catch (UntoldStory e) {
                return new Told(
                        List.of(),
                        List.of(),
                        String.valueOf(e.getMessage()).replaceAll("\\d.*", ""));
            }
        }

        Told byPart() {
            List<StoryEvent> sorted = new ArrayList<>(happenings);
            sorted.sort(
                    Comparator.comparing((StoryEvent h) -> h.part() + h.kind())
                            .thenComparing(StoryEvent::seconds));
            return new Told(sorted, endurance, refusal);
        }
    }

    private static void assertSame(Told one, Told other, double relative, String where) {
        assertEquals(one.refusal, other.refusal, where);
        String all = where + "\n" + lines(one) + "\nagainst\n" + lines(other);
        assertEquals(one.happenings.size(), other.happenings.size(), all);
        for (int i = 0; i < one.happenings.size(); i++) {
            StoryEvent a = one.happenings.get(i);
            StoryEvent b = other.happenings.get(i);
            assertEquals(a.kind() + " " + a.part(), b.kind() + " " + b.part(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + 2e-9, a + all);
        }
        for (int i = 0; i < one.endurance.size(); i++) {
            Endurance a = one.endurance.get(i);
            Endurance b = other.endurance.get(i);
            assertEquals(a.getClass(), b.getClass(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + 2e-9, all);
        }
    }

    private static String lines(Told told) {
        StringBuilder lines = new StringBuilder();
        told.happenings.forEach(h -> lines.append(h).append('\n'));
        return lines.append(told.endurance).toString();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theOrderOfPartsJoinsAndLoadsDoesNotMatter(long seed) throws UntoldStory {
        RandomAircraft aircraft = new RandomAircraft(seed);
        Timeline first = aircraft.timeline(Double.POSITIVE_INFINITY);
        Timeline second = aircraft.shuffled(seed);
        for (Failure failure : aircraft.failures) {
            assertSame(
                    Told.of(aircraft, first, failure).byPart(),
                    Told.of(aircraft, second, failure).byPart(),
                    SAME,
                    "seed " + seed + ", " + failure.name());
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theLengthOfStepsDoesNotMatter(long seed) throws UntoldStory {
        RandomAircraft aircraft = new RandomAircraft(seed);
        Timeline free = aircraft.timeline(Double.POSITIVE_INFINITY);
        for (double longest : new double[] {7, 1}) {
            Timeline careful = aircraft.timeline(longest);
            for (Failure failure : aircraft.failures) {
                assertSame(
                        Told.of(aircraft, free, failure),
                        Told.of(aircraft, careful, failure),
                        NEAR,
                        "seed " + seed + ", steps of " + longest + " s, " + failure.name());
            }
        }
    }

    @Test
    void theLotDrawsEveryKindOfHappeningThatItIsMeantFor() throws UntoldStory {
        Set<Kind> seen = EnumSet.noneOf(Kind.class);
        for (long seed : seeds().toArray()) {
            RandomAircraft aircraft = new RandomAircraft(seed);
            Timeline timeline = aircraft.timeline(Double.POSITIVE_INFINITY);
            for (Failure failure : aircraft.failures) {
                Told.of(aircraft, timeline, failure).happenings.forEach(h -> seen.add(h.kind()));
            }
        }
        Set<Kind> meant =
                EnumSet.of(
                        Kind.PROTECTOR_OPENS,
                        Kind.CONTACTS_OPEN,
                        Kind.LOAD_STOPS,
                        Kind.LOAD_RESTARTS,
                        Kind.BATTERY_EMPTY,
                        Kind.BATTERY_DISCONNECTS,
                        Kind.BATTERY_RECONNECTS,
                        Kind.SOURCE_STOPS,
                        Kind.CUE,
                        Kind.PILOT,
                        Kind.AUTOMATIC,
                        Kind.PHASE,
                        Kind.ENGINE_STOPS);
        assertTrue(seen.containsAll(meant), seen.toString());
    }
}

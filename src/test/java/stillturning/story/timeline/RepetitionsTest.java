package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/** Lists of events are short, and say what they leave out. */
class RepetitionsTest {

    private final List<StoryEvent> all = new ArrayList<>();

    private void add(double seconds, Kind kind, String part) {
        all.add(new StoryEvent(seconds, kind, part, kind + " " + all.size(), all.size() - 1));
    }

    /** A relay that opens and closes with its two lamps, every 30 ms. */
    private void rounds(int count) {
        for (int n = 0; n < count; n++) {
            double at = 1 + 0.03 * n;
            add(at, Kind.CONTACTS_OPEN, "relay");
            add(at + 0.005, Kind.LOAD_STOPS, "lamp");
            add(at + 0.015, Kind.CONTACTS_CLOSE, "relay");
        }
    }

    private static List<Kind> kinds(List<StoryEvent> events) {
        return events.stream().map(StoryEvent::kind).toList();
    }

    @Test
    void aRoundIsToldOnceWithItsCountItsPeriodAndItsEnd() {
        add(0, Kind.FAILURE, "wire");
        rounds(30);
        add(9, Kind.CUE, "lamp");
        List<StoryEvent> told = Repetitions.shortened(all);
        assertEquals(
                List.of(
                        Kind.FAILURE,
                        Kind.CONTACTS_OPEN,
                        Kind.LOAD_STOPS,
                        Kind.CONTACTS_CLOSE,
                        Kind.REPEATS,
                        Kind.CUE),
                kinds(told));
        assertEquals(
                "the same 29 times more, every 0.03 s, until 1.885 s",
                told.get(4).words().replace("0.0300", "0.03"));
    }

    /** What is led by an event that is left out is led by the line that stands for it. */
    @Test
    void causesFollow() {
        add(0, Kind.FAILURE, "wire");
        rounds(10);
        add(9, Kind.CUE, "lamp");
        List<StoryEvent> told = Repetitions.shortened(all);
        assertEquals(4, told.get(5).cause());
        assertEquals(3, told.get(4).cause());
        assertEquals(0, told.get(1).cause());
        assertEquals(-1, told.get(0).cause());
    }

    @Test
    void fewRoundsAreToldOneByOne() {
        add(0, Kind.FAILURE, "wire");
        rounds(4);
        assertEquals(all, Repetitions.shortened(all));
    }

    /** When the engine stopped last is asked for, so its last round stays. */
    @Test
    void theLastRoundOfAnEngineThatComesAndGoesStays() {
        add(0, Kind.FAILURE, "wire");
        for (int n = 0; n < 20; n++) {
            add(10 * n + 1, Kind.ENGINE_STOPS, "engine");
            add(10 * n + 4, Kind.ENGINE_RESTARTS, "engine");
        }
        add(201, Kind.ENGINE_STOPS, "engine");
        List<StoryEvent> told = Repetitions.shortened(all);
        assertEquals(
                List.of(1.0, 191.0, 201.0),
                told.stream()
                        .filter(e -> e.kind() == Kind.ENGINE_STOPS)
                        .map(StoryEvent::seconds)
                        .toList());
    }

    @Test
    void thePilotIsNeverOneOfMany() {
        for (int n = 0; n < 20; n++) {
            add(n, Kind.PILOT, "procedure");
        }
        assertEquals(all, Repetitions.shortened(all));
    }

    /** Without rounds what is too long is cut in the middle, and says so. */
    @ParameterizedTest
    @ValueSource(ints = {1001, 5000, 80_000})
    void noListIsLongerThanAThousandAndALine(int count) {
        SplittableRandom random = new SplittableRandom(count);
        for (int n = 0; n < count; n++) {
            add(n, Kind.CONTACTS_OPEN, "part-" + random.nextInt(1000));
        }
        List<StoryEvent> told = Repetitions.shortened(all);
        assertEquals(1001, told.size());
        assertEquals(Kind.REPEATS, told.get(600).kind());
        assertEquals(count - 1000 + " events more, which are left out here", told.get(600).words());
        assertEquals(all.get(count - 1).seconds(), told.get(1000).seconds());
        for (int i = 0; i < told.size(); i++) {
            assertTrue(told.get(i).cause() < i, "an event leads to what comes after it");
        }
    }
}

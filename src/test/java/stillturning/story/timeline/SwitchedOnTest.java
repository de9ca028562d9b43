package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.parts.element.Demand;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/**
 * Relays and contactors close only if their coils get a voltage while their contacts are open: one
 * that is fed through itself holds once it is in, and never gets there.
 */
class SwitchedOnTest {

    /** A battery, a contactor whose coil is fed from somewhere, a bus and what the engine needs. */
    private static Bench coilFrom(String part, String terminal) {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .bus("bus", "feed")
                .contactor("master")
                .load("engine-needs", Demand.DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .join("battery", "plus", "master", "in")
                .join("master", "out", "bus", "feed")
                .join("master", "coil-plus", part, terminal)
                .join("master", "coil-minus", "ground", "stud")
                .join("engine-needs", "plus", "bus", "bar");
    }

    private static List<String> stayOpen(Bench bench) throws UntoldStory {
        return new Timeline(bench.study(), bench.candidate())
                .normal().lost().stream().map(StoryEvent::part).toList();
    }

    @Test
    void oneFedFromItsBatteryPullsIn() throws UntoldStory {
        assertEquals(List.of(), stayOpen(coilFrom("battery", "plus")));
    }

    @Test
    void oneFedThroughItselfDoesNotAndItsVoltageIsTold() throws UntoldStory {
        Bench bench = coilFrom("bus", "bar");
        assertEquals(List.of("master"), stayOpen(bench));
        String words =
                new Timeline(bench.study(), bench.candidate()).normal().lost().get(0).words();
        assertTrue(words.startsWith("does not pull in from dead: 0.0 V at its coil"), words);
    }

    @Test
    void oneFedThroughItselfDoesWhereAnotherSourceIsBehindIt() throws UntoldStory {
        Bench bench =
                coilFrom("bus", "bar")
                        .battery("second", 5, 0.03, 1)
                        .join("second", "plus", "bus", "bar");
        assertEquals(List.of(), stayOpen(bench));
    }

    /** The second closes once the first has. */
    @Test
    void oneFedThroughAnotherWaitsForIt() throws UntoldStory {
        assertEquals(List.of(), stayOpen(withSecond(coilFrom("battery", "plus"))));
    }

    @Test
    void twoThatFeedEachOtherStayOpen() throws UntoldStory {
        assertEquals(List.of("master", "second"), stayOpen(withSecond(coilFrom("far-bus", "bar"))));
    }

    private static Bench withSecond(Bench bench) {
        return bench.contactor("second")
                .bus("far-bus", "feed")
                .join("battery", "plus", "second", "in")
                .join("second", "out", "far-bus", "feed")
                .join("second", "coil-plus", "bus", "bar")
                .join("second", "coil-minus", "ground", "stud");
    }

    /** A relay at an alternator's output waits until the alternator is excited. */
    @Test
    void oneThatAnAlternatorPullsInIsNotMissed() throws UntoldStory {
        Bench bench =
                coilFrom("battery", "plus")
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "field", "bus", "bar")
                        .contactor("relay")
                        .join("alternator", "output", "relay", "in")
                        .join("relay", "coil-plus", "alternator", "output")
                        .join("relay", "coil-minus", "ground", "stud")
                        .join("relay", "out", "bus", "bar");
        assertEquals(List.of(), stayOpen(bench));
    }
}

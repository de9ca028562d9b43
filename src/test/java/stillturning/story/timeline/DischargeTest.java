package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.model.EngineLogic;
import stillturning.parts.element.Demand;
import stillturning.story.Endurance.Lasts;
import stillturning.story.Endurance.NotLimited;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/** Endurance against closed forms. */
class DischargeTest {

    private static Bench alternatorAndBattery(double peukert, Demand.DemandKind kind, double amps) {
        return new Bench()
                .battery("battery", 20, 0.012, peukert)
                .alternator("alternator", 45)
                .bus("bus")
                .load("computer", kind, amps, Bench.HARDY)
                .engine(new EngineLogic.One("computer"), true)
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .join("computer", "plus", "bus", "bar");
    }

    @Test
    void withTheAlternatorGoneAConstantCurrentEmptiesTheBatteryInAmpHoursOverAmps()
            throws UntoldStory {
        Bench bench = alternatorAndBattery(1, Demand.DemandKind.CONSTANT_CURRENT, 10);
        Story story = bench.timeline().tell(bench.failure("alternator: no output"), Pilot.NEVER);
        // the field coil of 4 ohm goes on drawing about 3 A, so the bound is not 2 h but less
        double seconds = assertInstanceOf(Lasts.class, story.engine().endurance()).seconds();
        assertEquals(20.0 / (10 + 3.05) * 3600, seconds, 60);
    }

    @Test
    void withTheFieldOpenOnlyTheLoadCounts() throws UntoldStory {
        Bench bench = alternatorAndBattery(1, Demand.DemandKind.CONSTANT_CURRENT, 10);
        Story story =
                bench.timeline().tell(bench.failure("alternator: regulator open"), Pilot.NEVER);
        double seconds = assertInstanceOf(Lasts.class, story.engine().endurance()).seconds();
        // 20 Ah / 10 A = 2 h, then 20 ms of ride-through and 0.3 s that the engine tolerates
        assertEquals(7200 + 0.02 + 0.3, seconds, 1e-3);
    }

    @Test
    void peukertShortensByTheRatioOfCurrentsToTheExponentLessOne() throws UntoldStory {
        Bench bench = alternatorAndBattery(1.2, Demand.DemandKind.CONSTANT_CURRENT, 10);
        Story story =
                bench.timeline().tell(bench.failure("alternator: regulator open"), Pilot.NEVER);
        double seconds = assertInstanceOf(Lasts.class, story.engine().endurance()).seconds();
        assertEquals(7200 / Math.pow(10, 0.2) + 0.32, seconds, 1e-3);
    }

    @Test
    void withTheAlternatorDeliveringNothingEndsTheEngine() throws UntoldStory {
        Bench bench = alternatorAndBattery(1, Demand.DemandKind.CONSTANT_POWER, 10);
        Story story = bench.timeline().tell(bench.failure("battery: capacity lost"), Pilot.NEVER);
        assertInstanceOf(NotLimited.class, story.engine().endurance());
        assertTrue(story.engine().runningAtEnd());
    }
}

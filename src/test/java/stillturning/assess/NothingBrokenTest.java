package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Candidates with nothing wrong, and what becomes of them by themselves. */
class NothingBrokenTest {

    private static Bench flying(double alternatorAmps, double computerAmps, double radioAmps) {
        return new Bench()
                .part(Shelf.lead("battery", 20, 0.02, 1))
                .join("battery", "minus", "ground", "stud")
                .part(Shelf.alternator("alternator", 14.2, alternatorAmps, false))
                .join("alternator", "case", "ground", "stud")
                .bus("bus")
                .join("battery", "plus", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .join("alternator", "field", "bus", "bar")
                .load("computer", DemandKind.CONSTANT_CURRENT, computerAmps, Bench.HARDY)
                .join("computer", "plus", "bus", "bar")
                .breaker("radio-breaker", 5)
                .load("radio", DemandKind.CONSTANT_CURRENT, radioAmps, Bench.HARDY)
                .join("bus", "bar", "radio-breaker", "in")
                .join("radio-breaker", "out", "radio", "plus")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static NothingBroken undisturbed(Bench bench) throws UntoldStory {
        return Assess.undisturbed(bench.study(), bench.candidate());
    }

    @Test
    void nothingHappensToACandidateThatIsWell() throws UntoldStory {
        NothingBroken flight = undisturbed(flying(45, 5, 1));
        assertFalse(flight.unwell());
        assertTrue(flight.engineRunsOn());
    }

    @Test
    void aBreakerTooSmallForItsLoadOpensAlthoughNothingFails() throws UntoldStory {
        NothingBroken flight = undisturbed(flying(45, 5, 15));
        assertTrue(flight.unwell());
        assertTrue(flight.engineRunsOn());
        assertEquals(StoryEvent.Kind.PROTECTOR_OPENS, flight.happenings().get(0).kind());
        assertEquals("radio-breaker", flight.happenings().get(0).part());
    }

    @Test
    void anAlternatorThatCannotCarryCruiseLimitsTheEngine() throws UntoldStory {
        // 20 A asked, less than 10 A given: 20 Ah cannot last longer than two and a half hours
        NothingBroken flight = undisturbed(flying(10, 20, 0.5));
        assertTrue(flight.normal().engineRuns());
        assertFalse(flight.engineRunsOn());
        double seconds = flight.course().engine().endurance().seconds();
        assertTrue(seconds > 1800 && seconds < 2.5 * 3600, seconds + " s");
    }

    /**
     * A lithium battery that comes low takes in all that the alternator gives, and its management
     * disconnects it before anything else happens; the alternator does not hold alone. Event
     * 20170702X73412 (NTSB).
     */
    @Test
    void aBatteryThatDisconnectsItselfAtOnceIsTheReasonWhyTheEngineDoesNotRun() throws UntoldStory {
        Management lenient = Shelf.LENIENT;
        Management limited =
                new Management(
                        lenient.underVolts(),
                        lenient.overVolts(),
                        lenient.overAmps(),
                        new Limit(20, 5),
                        Optional.empty(),
                        lenient.reconnection());
        Bench bench =
                new Bench()
                        .part(Shelf.lithium("battery", 10, 0.1, limited))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 45, true))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true);
        NothingBroken flight = undisturbed(bench);
        assertTrue(flight.unwell());
        assertFalse(flight.normal().engineRuns());
        StoryEvent first = flight.normal().lost().get(0);
        assertEquals(StoryEvent.Kind.BATTERY_DISCONNECTS, first.kind());
        assertTrue(first.words().contains("of charge exceeds its 20 A"), first.words());
    }
}

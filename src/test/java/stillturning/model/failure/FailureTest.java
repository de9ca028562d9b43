package stillturning.model.failure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.model.Candidate.Hit;
import stillturning.parts.FailureMode;

class FailureTest {

    private static final Failure OPEN = Failure.of(new Hit("feed", FailureMode.of("open")));
    private static final Failure MASTER_OFF = Failure.levers("drill", Map.of("master", "off"));

    @Test
    void twoAtOnceBringTheHitsAndLeversOfBoth() {
        Failure both = OPEN.and(MASTER_OFF);
        assertEquals("feed: open + drill", both.name());
        assertEquals(OPEN.hits(), both.hits());
        assertEquals(MASTER_OFF.levers(), both.levers());
    }

    @Test
    void aDeadLampStaysDeadWhateverComesWithIt() {
        Failure both = OPEN.and(Failure.dark("low voltage"));
        assertEquals("feed: open + low voltage: indicator dead", both.name());
        assertEquals(Set.of("low voltage"), both.dark());
        assertEquals(OPEN.hits(), both.hits());
    }

    @Test
    void theSameHitCountsOnce() {
        assertEquals(OPEN.hits(), OPEN.and(OPEN).hits());
    }

    @Test
    void aLeverCannotStandInTwoPositions() {
        Failure on = Failure.levers("left", Map.of("master", "on"));
        assertFalse(on.goesWith(MASTER_OFF));
        assertTrue(OPEN.goesWith(MASTER_OFF));
        assertThrows(IllegalArgumentException.class, () -> on.and(MASTER_OFF));
    }
}

package stillturning.desktop.viewmodel.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class TimeAxisTest {

    private static final TimeAxis AXIS =
            new TimeAxis(List.of(0.0, 0.012, 2.0, 3600.0), List.of(0.0, 0.2, 0.6, 1.0));

    @Test
    void timesAndPositionsAnswerEachOther() {
        for (double seconds : new double[] {0, 0.003, 0.012, 1.7, 2, 100, 3600}) {
            assertEquals(seconds, AXIS.secondsAt(AXIS.position(seconds)), 1e-9 * (1 + seconds));
        }
        for (double seconds : AXIS.seconds()) {
            // at an event nothing may be lost, or the frame before it would be shown
            assertEquals(seconds, AXIS.secondsAt(AXIS.position(seconds)));
        }
    }

    @Test
    void positionsRise() {
        double before = -1;
        for (double seconds = 0; seconds < 3600; seconds += 0.37) {
            assertTrue(AXIS.position(seconds) > before);
            before = AXIS.position(seconds);
        }
    }

    @Test
    void outsideAreTheEnds() {
        assertEquals(0, AXIS.position(-5));
        assertEquals(1, AXIS.position(5000));
        assertEquals(3600, AXIS.secondsAt(1.2));
    }

    @Test
    void stepsGoFromEventToEvent() {
        assertEquals(0.012, AXIS.next(0));
        assertEquals(2, AXIS.next(0.012));
        assertEquals(3600, AXIS.next(3600));
        assertEquals(0.012, AXIS.previous(2));
        assertEquals(0, AXIS.previous(0));
    }

    @Test
    void oneTimeIsNoAxis() {
        assertThrows(
                IllegalArgumentException.class, () -> new TimeAxis(List.of(0.0), List.of(0.0)));
    }

    @Test
    void playingRunsToTheEndAndStopsThere() {
        Scrubber scrubber = new Scrubber();
        scrubber.take(Optional.of(AXIS), true);
        scrubber.toggle();
        assertTrue(scrubber.playing().get());
        double before = 0;
        int pulses = 0;
        while (scrubber.playing().get()) {
            scrubber.run(1 / 60.0);
            assertTrue(scrubber.seconds().get() >= before);
            before = scrubber.seconds().get();
            pulses++;
        }
        assertEquals(3600, scrubber.seconds().get());
        // the shortest of the stretches, a fifth of the axis, takes a third of a second
        assertEquals(0.35 / 0.2, pulses / 60.0, 0.05);
        scrubber.toggle();
        assertEquals(0, scrubber.seconds().get());
        scrubber.toggle();
        assertFalse(scrubber.playing().get());
    }

    @Test
    void aDraggedPositionIsATimeAndATimeAPosition() {
        Scrubber scrubber = new Scrubber();
        scrubber.take(Optional.of(AXIS), true);
        scrubber.position().set(0.6);
        assertEquals(2, scrubber.seconds().get());
        scrubber.to(0.012);
        assertEquals(0.2, scrubber.position().get());
        scrubber.next();
        assertEquals(2, scrubber.seconds().get());
        scrubber.previous();
        assertEquals(0.012, scrubber.seconds().get());
    }

    @Test
    void withoutAStoryNothingMoves() {
        Scrubber scrubber = new Scrubber();
        scrubber.toggle();
        scrubber.next();
        scrubber.run(1);
        assertFalse(scrubber.playing().get());
        assertEquals(0, scrubber.seconds().get());
    }
}

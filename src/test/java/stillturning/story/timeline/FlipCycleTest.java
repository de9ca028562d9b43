package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** The round in which devices flip without end. */
class FlipCycleTest {

    private static final String[] NAMES = {"lamp", "relay", "breaker"};

    private static String of(int times, double apart, int... round) {
        FlipCycle cycle = new FlipCycle();
        cycle.flipped(2, 0);
        for (int n = 0; n < times; n++) {
            for (int device : round) {
                cycle.flipped(device, 1 + n * apart);
            }
        }
        return cycle.inWords(i -> NAMES[i]);
    }

    @Test
    void namesItsMembersAndItsPeriod() {
        assertEquals("lamp, relay, every 0.250 s, 12 times", of(12, 0.25, 1, 0));
    }

    @Test
    void aRoundMayPassTheSamePartTwice() {
        assertEquals("lamp, relay, every 2.00 s, 7 times", of(7, 2, 1, 1, 0));
    }

    @Test
    void aRoundAtOneInstantHasNoPeriod() {
        assertEquals("lamp, all at one instant, 20 times", of(20, 0, 0));
    }
}

package stillturning.assess.findout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class GroupScreenTest {

    private static final int NUMBERS = 137;

    /** Number 7 turns a step where it is high, number 40 another where it is low; both alone. */
    private static Map<Integer, Set<String>> turned(GroupScreen screen) {
        Map<Integer, Set<String>> turned = new TreeMap<>();
        for (int trial = 0; trial < GroupScreen.TRIALS; trial++) {
            Set<String> steps = new HashSet<>();
            if (screen.isHigh(7, trial)) {
                steps.add("by 7");
            }
            if (!screen.isHigh(40, trial)) {
                steps.add("by 40");
            }
            turned.put(trial, steps);
        }
        return turned;
    }

    @Test
    void whatTurnsAStepAloneIsSuspectedWhateverTheOthersDo() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        Map<Integer, Set<String>> turned = turned(screen);
        assertTrue(screen.suspected(7, true, turned).contains("by 7"));
        assertTrue(screen.suspected(40, false, turned).contains("by 40"));
    }

    @Test
    void whatTurnedNowhereWithANumberAtAnEndIsNotSuspectedThere() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        Map<Integer, Set<String>> turned = turned(screen);
        assertFalse(screen.suspected(7, false, turned).contains("by 7"));
        assertFalse(screen.suspected(40, true, turned).contains("by 40"));
        assertFalse(screen.suspected(7, true, turned).contains("by none"));
    }

    /** Both have to be high: each alone turns it, where the other one is as likely. */
    @Test
    void whatOneOtherNumberUndoesIsMissedOnceInSixteenTimes() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        int missed = 0;
        int all = 0;
        for (int one = 0; one < NUMBERS; one++) {
            for (int other = 0; other < one; other++) {
                Map<Integer, Set<String>> turned = new TreeMap<>();
                for (int trial = 0; trial < GroupScreen.TRIALS; trial++) {
                    boolean both = screen.isHigh(one, trial) && screen.isHigh(other, trial);
                    turned.put(trial, both ? Set.of("by both") : Set.of());
                }
                missed += screen.suspected(one, true, turned).isEmpty() ? 1 : 0;
                all++;
            }
        }
        assertEquals(1.0 / 16, (double) missed / all, 0.02);
    }

    @Test
    void theSecondTrialOfAPairHasEveryNumberAtItsOtherEnd() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        for (int n = 0; n < NUMBERS; n++) {
            for (int pair = 0; pair < GroupScreen.PAIRS; pair++) {
                assertEquals(screen.isHigh(n, 2 * pair), !screen.isHigh(n, 2 * pair + 1));
            }
        }
    }

    @Test
    void eachNumberIsHighInHalfOfTheTrials() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        for (int n = 0; n < NUMBERS; n++) {
            int number = n;
            long high =
                    IntStream.range(0, GroupScreen.TRIALS)
                            .filter(t -> screen.isHigh(number, t))
                            .count();
            assertEquals(GroupScreen.TRIALS / 2, high);
        }
    }

    @Test
    void aTrialThatCouldNotBeMadeExcludesNothing() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        Map<Integer, Set<String>> turned = turned(screen);
        turned.remove(0);
        turned.remove(1);
        assertTrue(screen.suspected(7, true, turned).contains("by 7"));
    }
}

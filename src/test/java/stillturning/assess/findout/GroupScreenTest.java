package stillturning.assess.findout;

import static org.junit.jupiter.api.Assertions.assertEquals;
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
        assertEquals(Set.of("by 7"), screen.suspected(7, true, turned));
        assertTrue(screen.suspected(40, false, turned).contains("by 40"));
    }

    @Test
    void fewOthersAreSuspectedWithThem() {
        GroupScreen screen = new GroupScreen(NUMBERS);
        Map<Integer, Set<String>> turned = turned(screen);
        long pairs =
                IntStream.range(0, NUMBERS)
                        .mapToLong(
                                n ->
                                        screen.suspected(n, true, turned).size()
                                                + screen.suspected(n, false, turned).size())
                        .sum();
        // 137 numbers, 2 ends, 2 steps: 548 pairs, of which one in 70 is in step by chance
        assertTrue(pairs >= 2 && pairs < 30, pairs + " pairs are suspected");
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

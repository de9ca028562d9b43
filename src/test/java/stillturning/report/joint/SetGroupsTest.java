package stillturning.report.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.SplittableRandom;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Grouping leaves nothing out and puts nothing in. */
class SetGroupsTest {

    @Test
    void anyOfTwoChainsWithAnyOfAnotherIsOneRow() {
        List<List<Integer>> sets =
                List.of(List.of(0, 4), List.of(0, 5), List.of(1, 4), List.of(1, 5), List.of(2, 3));
        List<SetGroups.SetGroup> groups = SetGroups.of(sets, List.of(0.1, 0.1, 0.1, 0.1, 0.3));
        assertEquals(List.of(List.of(0, 1), List.of(4, 5)), groups.get(0).classes());
        assertEquals(4, groups.get(0).sets());
        assertEquals(0.4, groups.get(0).chance(), 1e-12);
        assertEquals(List.of(List.of(2), List.of(3)), groups.get(1).classes());
    }

    static IntStream seeds() {
        return IntStream.range(0, 40);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void theChoicesOfAllRowsAreTheSetsEachOnce(int seed) {
        SplittableRandom random = new SplittableRandom(seed);
        Set<List<Integer>> drawn = new HashSet<>();
        for (int i = 0; i < 30; i++) {
            Set<Integer> set = new TreeSet<>();
            int size = 1 + random.nextInt(3);
            while (set.size() < size) {
                set.add(random.nextInt(9));
            }
            drawn.add(List.copyOf(set));
        }
        List<List<Integer>> sets = List.copyOf(drawn);
        List<SetGroups.SetGroup> groups =
                SetGroups.of(sets, sets.stream().map(set -> random.nextDouble()).toList());
        List<List<Integer>> chosen = new ArrayList<>();
        for (SetGroups.SetGroup group : groups) {
            List<List<Integer>> choices = choices(group.classes());
            assertEquals(group.sets(), choices.size(), "seed " + seed);
            chosen.addAll(choices);
        }
        assertEquals(sets.size(), chosen.size(), "seed " + seed);
        assertEquals(drawn, new HashSet<>(chosen), "seed " + seed);
        for (int i = 1; i < groups.size(); i++) {
            assertTrue(groups.get(i - 1).chance() >= groups.get(i).chance(), "seed " + seed);
        }
    }

    private static List<List<Integer>> choices(List<List<Integer>> classes) {
        List<List<Integer>> choices = List.of(List.of());
        for (List<Integer> some : classes) {
            List<List<Integer>> longer = new ArrayList<>();
            for (List<Integer> choice : choices) {
                for (int event : some) {
                    Set<Integer> more = new TreeSet<>(choice);
                    more.add(event);
                    longer.add(List.copyOf(more));
                }
            }
            choices = longer;
        }
        return choices;
    }
}

package stillturning.cli.size;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class UnifiedDiffTest {

    private static final Pattern HUNK = Pattern.compile("@@ -(\\d+),(\\d+) \\+(\\d+),(\\d+) @@");

    @Test
    void oneChangedLineStandsBetweenThreeOthers() {
        assertEquals(
                "--- f\n+++ f\n@@ -2,7 +2,7 @@\n b\n c\n d\n-e\n+E\n f\n g\n h\n",
                UnifiedDiff.of("f", "a\nb\nc\nd\ne\nf\ng\nh\ni\n", "a\nb\nc\nd\nE\nf\ng\nh\ni\n"));
    }

    @Test
    void equalTextsDifferInNothing() {
        assertEquals("", UnifiedDiff.of("f", "a\nb\n", "a\nb\n"));
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void thePatchTurnsOneTextIntoTheOther(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        List<String> before = new ArrayList<>();
        List<String> after = new ArrayList<>();
        for (int i = 0; i < 60; i++) {
            String line = "line " + random.nextInt(20);
            int fate = random.nextInt(12);
            if (fate != 0) {
                before.add(line);
            }
            if (fate != 1) {
                after.add(fate == 2 ? "other" : line);
            }
        }
        String patch = UnifiedDiff.of("f", text(before), text(after));
        assertEquals(after, patched(before, patch.lines().toList()), "seed " + seed);
    }

    private static String text(List<String> lines) {
        return String.join("\n", lines) + "\n";
    }

    /** Carries a patch out as its reader would, and holds it to its own counts. */
    private static List<String> patched(List<String> before, List<String> patch) {
        List<String> result = new ArrayList<>();
        int next = 0;
        int at = Math.min(2, patch.size());
        while (at < patch.size()) {
            Matcher head = HUNK.matcher(patch.get(at++));
            assertTrue(head.matches());
            int start = Integer.parseInt(head.group(1)) - (head.group(2).equals("0") ? 0 : 1);
            result.addAll(before.subList(next, start));
            next = start;
            int put = 0;
            int taken = 0;
            while (at < patch.size() && !patch.get(at).startsWith("@@")) {
                String line = patch.get(at++);
                if (line.charAt(0) != '+') {
                    assertEquals(before.get(next++), line.substring(1));
                    taken++;
                }
                if (line.charAt(0) != '-') {
                    result.add(line.substring(1));
                    put++;
                }
            }
            assertEquals(Integer.parseInt(head.group(2)), taken);
            assertEquals(Integer.parseInt(head.group(4)), put);
        }
        result.addAll(before.subList(next, before.size()));
        return result;
    }
}

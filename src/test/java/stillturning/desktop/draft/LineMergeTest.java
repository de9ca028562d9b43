package stillturning.desktop.draft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class LineMergeTest {

    private static String lines(String... lines) {
        return String.join("\n", lines) + "\n";
    }

    @Test
    void changesApartAreJoinedAndNeighboursAreNot() {
        String base = lines("a", "b", "c", "d");
        assertEquals(
                Optional.of(lines("A", "b", "c", "D")),
                LineMerge.of(base, lines("A", "b", "c", "d"), lines("a", "b", "c", "D")));
        assertEquals(
                Optional.empty(),
                LineMerge.of(base, lines("A", "b", "c", "d"), lines("a", "B", "c", "d")));
    }

    @Test
    void lineEndsAndAMissingLastOneAreKept() {
        assertEquals(
                Optional.of("A\r\nb\r\nC"),
                LineMerge.of("a\r\nb\r\nc", "A\r\nb\r\nc", "a\r\nb\r\nC"));
    }

    @Test
    void twoInsertionsAtOnePlaceTouchUnlessTheyAreTheSame() {
        String base = lines("a", "b");
        assertEquals(
                Optional.empty(), LineMerge.of(base, lines("a", "x", "b"), lines("a", "y", "b")));
        assertEquals(
                Optional.of(lines("a", "x", "b")),
                LineMerge.of(base, lines("a", "x", "b"), lines("a", "x", "b")));
    }

    @Test
    void whatOneSideLeavesAloneIsTheOtherSide() {
        Random random = new Random(7);
        for (int i = 0; i < 200; i++) {
            String base = anyText(random);
            String other = anyText(random);
            assertEquals(Optional.of(other), LineMerge.of(base, base, other));
            assertEquals(Optional.of(other), LineMerge.of(base, other, base));
            assertEquals(
                    LineMerge.of(base, other, anyText(new Random(i))),
                    LineMerge.of(base, anyText(new Random(i)), other));
        }
    }

    private static String anyText(Random random) {
        List<String> lines = new ArrayList<>();
        for (int i = random.nextInt(8); i > 0; i--) {
            lines.add(String.valueOf((char) ('a' + random.nextInt(4))));
        }
        return String.join("\n", lines);
    }
}

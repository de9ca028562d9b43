package stillturning.cli.size;

import java.util.ArrayList;
import java.util.List;

/**
 * The difference between two texts, line by line, as patch programs read it: three lines around
 * each change.
 *
 * @see "POSIX.1-2017, diff -u, from memory"
 */
final class UnifiedDiff {

    private static final int AROUND = 3;

    /** A line that is kept, taken out or put in, with its number before it in both texts. */
    private record Line(char mark, String text, int before, int after) {}

    private final List<Line> lines = new ArrayList<>();

    private UnifiedDiff(List<String> before, List<String> after) {
        int[][] common = common(before, after);
        int i = 0;
        int j = 0;
        while (i < before.size() || j < after.size()) {
            if (i < before.size() && j < after.size() && before.get(i).equals(after.get(j))) {
                lines.add(new Line(' ', before.get(i), i++, j++));
            } else if (i < before.size()
                    && (j == after.size() || common[i + 1][j] >= common[i][j + 1])) {
                lines.add(new Line('-', before.get(i), i++, j));
            } else {
                lines.add(new Line('+', after.get(j), i, j++));
            }
        }
    }

    /** The patch; empty if nothing differs. */
    static String of(String name, String before, String after) {
        UnifiedDiff diff = new UnifiedDiff(before.lines().toList(), after.lines().toList());
        String hunks = diff.hunks();
        return hunks.isEmpty() ? "" : "--- " + name + "\n+++ " + name + "\n" + hunks;
    }

    /** Length of the longest common run of lines behind each pair of places. */
    private static int[][] common(List<String> before, List<String> after) {
        int[][] common = new int[before.size() + 1][after.size() + 1];
        for (int i = before.size() - 1; i >= 0; i--) {
            for (int j = after.size() - 1; j >= 0; j--) {
                common[i][j] =
                        before.get(i).equals(after.get(j))
                                ? common[i + 1][j + 1] + 1
                                : Math.max(common[i + 1][j], common[i][j + 1]);
            }
        }
        return common;
    }

    private String hunks() {
        StringBuilder text = new StringBuilder();
        int at = 0;
        while (at < lines.size()) {
            if (lines.get(at).mark == ' ') {
                at++;
                continue;
            }
            int from = Math.max(0, at - AROUND);
            int to = end(at);
            text.append(hunk(lines.subList(from, to)));
            at = to;
        }
        return text.toString();
    }

    /** Where the hunk ends that has its first change here. */
    private int end(int change) {
        int last = change;
        for (int k = change; k < lines.size() && k <= last + 2 * AROUND; k++) {
            if (lines.get(k).mark != ' ') {
                last = k;
            }
        }
        return Math.min(lines.size(), last + AROUND + 1);
    }

    private static String hunk(List<Line> hunk) {
        long before = hunk.stream().filter(l -> l.mark != '+').count();
        long after = hunk.stream().filter(l -> l.mark != '-').count();
        StringBuilder text = new StringBuilder();
        text.append("@@ -")
                .append(start(hunk.get(0).before, before))
                .append(" +")
                .append(start(hunk.get(0).after, after))
                .append(" @@\n");
        hunk.forEach(line -> text.append(line.mark).append(line.text).append('\n'));
        return text.toString();
    }

    private static String start(int line, long count) {
        return (count == 0 ? line : line + 1) + "," + count;
    }
}

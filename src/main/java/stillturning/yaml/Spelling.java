package stillturning.yaml;

import java.util.Collection;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds the word that somebody probably meant. */
public final class Spelling {

    private static final int LONGEST = 60;
    private static final int MOST_NAMES = 12;

    private Spelling() {}

    /**
     * The candidate nearest to the word, if it is near enough to be a slip of the pen; the first of
     * equals.
     */
    public static Optional<String> nearest(String word, Collection<String> candidates) {
        if (word.length() > LONGEST) {
            return Optional.empty();
        }
        String plain = plain(word);
        int least = Math.max(1, plain.length() / 3) + 1;
        Optional<String> best = Optional.empty();
        for (String candidate : candidates) {
            int distance = distance(plain, plain(candidate));
            if (distance < least) {
                least = distance;
                best = Optional.of(candidate);
            }
        }
        return best;
    }

    /** {@code did you mean "gauge"? } with a trailing space, or nothing. */
    public static String didYouMean(String word, Collection<String> candidates) {
        return nearest(word, candidates).map(c -> "did you mean \"" + c + "\"? ").orElse("");
    }

    /** What to write instead of a name that is none of these. */
    public static String choice(String name, Collection<String> known) {
        if (known.isEmpty()) {
            return "there is none to choose from";
        }
        String some = known.stream().limit(MOST_NAMES).collect(Collectors.joining(", "));
        String all = known.size() > MOST_NAMES ? some + ", ..." : some;
        return didYouMean(name, known) + "write one of " + all;
    }

    private static String plain(String word) {
        return word.toLowerCase(Locale.ROOT).replace('_', '-').replace(' ', '-');
    }

    /**
     * Edits between two words, two swapped neighbours counting as one (optimal string alignment).
     */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = Math.min(i, j) == 0 ? Math.max(i, j) : cheapest(a, b, i, j, d);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(String a, String b, int i, int j, int[][] d) {
        int replaced = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int least = Math.min(replaced, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped =
                i > 1
                        && j > 1
                        && a.charAt(i - 1) == b.charAt(j - 2)
                        && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, d[i - 2][j - 2] + 1) : least;
    }
}

package stillturning.yaml;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Finds what somebody means by a few words: in any case and order, with or without hyphens, cut
 * short or with a slip of the pen.
 */
public final class LooseNames {

    /**
     * A name, and what of it may stay unsaid.
     *
     * @param head names the thing
     * @param tail narrows it; may be empty
     */
    public record LooseName(String head, String tail) {
        /** All of which is to be said. */
        public static LooseName of(String head) {
            return new LooseName(head, "");
        }
    }

    /** A thing and everything that it is called. */
    public record Named<T>(T thing, List<LooseName> names) {
        public Named {
            names = List.copyOf(names);
        }
    }

    /** Words that say nothing about which: those of a question, and those for any failure. */
    private static final Set<String> FILLERS =
            Set.of(
                    "the", "of", "in", "at", "to", "is", "and", "s", "fails", "fail", "failed",
                    "failure", "what", "happens", "happen", "if", "when", "does", "do", "would",
                    "my", "our", "goes", "wrong", "breaks", "dies", "quits");

    /** Nobody names a failure by more; what comes after them is not looked at. */
    private static final int MOST_WORDS = 24;

    /** No word of a name is as long. */
    private static final int LONGEST_WORD = 60;

    private static final Pattern BETWEEN_WORDS =
            Pattern.compile("[^\\p{L}\\p{N}]+|(?<=\\p{L})(?=\\p{N})|(?<=\\p{N})(?=\\p{L})");

    // a lone letter may begin a word of the head; of the tail it would mean too many
    private static final int SHORTEST_OF_HEAD = 1;
    private static final int SHORTEST_OF_TAIL = 2;
    private static final int SHORTEST_WITH_SLIP = 4;
    private static final int MOST_GLUED = 4;

    private LooseNames() {}

    /**
     * How well words fit a name, best first.
     *
     * @param slips words that are misspelt
     * @param prefixes words that are cut short
     * @param headLeft words of the head that were not said
     * @param tailLeft 0 if all of the tail was said, else 1
     */
    private record Fit(int slips, int prefixes, int headLeft, int tailLeft)
            implements Comparable<Fit> {
        private static final Comparator<Fit> ORDER =
                Comparator.comparingInt(Fit::slips)
                        .thenComparingInt(Fit::prefixes)
                        .thenComparingInt(Fit::headLeft)
                        .thenComparingInt(Fit::tailLeft);

        @Override
        public int compareTo(Fit other) {
            return ORDER.compare(this, other);
        }
    }

    private record Fitting<T>(T thing, Fit fit) {}

    /** All things that the words fit best, in their order; empty if they fit none. */
    public static <T> List<T> best(String said, List<Named<T>> among) {
        List<String> words = words(said);
        if (words.isEmpty()) {
            return List.of();
        }
        List<Fitting<T>> fitting =
                among.stream().flatMap(named -> fitting(words, named).stream()).toList();
        Optional<Fit> best = fitting.stream().map(Fitting::fit).min(Comparator.naturalOrder());
        return fitting.stream()
                .filter(f -> f.fit.equals(best.orElseThrow()))
                .map(Fitting::thing)
                .toList();
    }

    /** All things that the words fit, best first; all of them in their order if none are said. */
    public static <T> List<T> fitting(String said, List<Named<T>> among) {
        List<String> words = words(said);
        if (words.isEmpty()) {
            return among.stream().map(Named::thing).toList();
        }
        return among.stream()
                .flatMap(named -> fitting(words, named).stream())
                .sorted(Comparator.comparing((Fitting<T> f) -> f.fit))
                .map(Fitting::thing)
                .toList();
    }

    /** Things that share most words with what was said, best first. */
    public static <T> List<T> nearest(String said, List<Named<T>> among) {
        List<String> words = words(said);
        return among.stream()
                .filter(named -> shared(words, named) > 0)
                .sorted(Comparator.comparingInt((Named<T> named) -> -shared(words, named)))
                .map(Named::thing)
                .toList();
    }

    /** Things of which the whole head was said, whatever else was; those of the longest heads. */
    public static <T> List<T> naming(String said, List<Named<T>> among) {
        List<String> words = words(said);
        int most = among.stream().mapToInt(named -> headSaid(words, named)).max().orElse(0);
        return most == 0
                ? List.of()
                : among.stream()
                        .filter(named -> headSaid(words, named) == most)
                        .map(Named::thing)
                        .toList();
    }

    private static int headSaid(List<String> said, Named<?> named) {
        return named.names.stream()
                .filter(name -> new Matching(said, name).head.isEmpty())
                .mapToInt(name -> words(name.head).size())
                .max()
                .orElse(0);
    }

    private static <T> Optional<Fitting<T>> fitting(List<String> said, Named<T> named) {
        return named.names.stream()
                .flatMap(name -> fit(said, name).stream())
                .min(Comparator.naturalOrder())
                .map(fit -> new Fitting<>(named.thing, fit));
    }

    private static Optional<Fit> fit(List<String> said, LooseName name) {
        Matching matching = new Matching(said, name);
        return matching.complete() ? Optional.of(matching.fit()) : Optional.empty();
    }

    private static <T> int shared(List<String> said, Named<T> named) {
        return named.names.stream()
                .mapToInt(name -> said.size() - new Matching(said, name).unmatched.size())
                .max()
                .orElse(0);
    }

    /** Lower-case words of a text, fillers left out; all of them if there are only fillers. */
    private static List<String> words(String text) {
        String start = text.substring(0, Math.min(text.length(), MOST_WORDS * LONGEST_WORD));
        List<String> all =
                Stream.of(BETWEEN_WORDS.split(start.toLowerCase(Locale.ROOT)))
                        .filter(word -> !word.isEmpty())
                        .limit(MOST_WORDS)
                        .toList();
        List<String> telling = all.stream().filter(word -> !FILLERS.contains(word)).toList();
        return telling.isEmpty() ? all : telling;
    }

    /** Words said, laid against those of one name: whole words first, then cut, then misspelt. */
    private static final class Matching {
        private final List<String> head;
        private final List<String> tail;
        private final List<String> unmatched;
        private int slips;
        private int prefixes;

        Matching(List<String> said, LooseName name) {
            head = new ArrayList<>(words(name.head));
            tail = new ArrayList<>(words(name.tail));
            unmatched = new ArrayList<>(said);
            unmatched.removeIf(word -> takeRun(head, word) || takeRun(tail, word));
            head.removeIf(word -> takeRun(unmatched, word));
            tail.removeIf(word -> takeRun(unmatched, word));
            unmatched.removeIf(
                    word ->
                            takeCut(head, word, SHORTEST_OF_HEAD)
                                    || takeCut(tail, word, SHORTEST_OF_TAIL));
            unmatched.removeIf(word -> takeMisspelt(head, word) || takeMisspelt(tail, word));
        }

        boolean complete() {
            return unmatched.isEmpty();
        }

        Fit fit() {
            return new Fit(slips, prefixes, head.size(), tail.isEmpty() ? 0 : 1);
        }

        /** Takes one word, or neighbours that make the whole when written as one. */
        private static boolean takeRun(List<String> words, String whole) {
            for (int length = 1; length <= Math.min(MOST_GLUED, words.size()); length++) {
                for (int from = 0; from + length <= words.size(); from++) {
                    if (whole.startsWith(words.get(from))) {
                        List<String> run = words.subList(from, from + length);
                        if (String.join("", run).equals(whole)) {
                            run.clear();
                            return true;
                        }
                    }
                }
            }
            return false;
        }

        private boolean takeCut(List<String> words, String said, int shortest) {
            boolean taken =
                    said.length() >= shortest
                            && !isNumber(said)
                            && takeFirst(words, word -> word.startsWith(said));
            prefixes += taken ? 1 : 0;
            return taken;
        }

        private boolean takeMisspelt(List<String> words, String said) {
            boolean taken =
                    said.length() >= SHORTEST_WITH_SLIP
                            && !isNumber(said)
                            && takeFirst(
                                    words,
                                    word -> Spelling.nearest(said, List.of(word)).isPresent());
            slips += taken ? 1 : 0;
            return taken;
        }

        private static boolean takeFirst(List<String> words, Predicate<String> fits) {
            Optional<String> first = words.stream().filter(fits).findFirst();
            first.ifPresent(words::remove);
            return first.isPresent();
        }

        private static boolean isNumber(String word) {
            return Character.isDigit(word.charAt(0));
        }
    }
}

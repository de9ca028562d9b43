package stillturning.report.guide;

import static java.util.Objects.requireNonNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The pages of the user's guide, in the order in which a builder comes to the questions. */
public final class Guide {

    private static final List<String> NAMES =
            List.of(
                    "first-evening",
                    "which-one",
                    "breakers-or-electronic",
                    "what-if",
                    "how-long",
                    "starting",
                    "over-voltage",
                    "switches",
                    "two-failures",
                    "mending",
                    "wires",
                    "ground-test",
                    "guesses",
                    "files",
                    "counsellor",
                    "outcomes");

    private Guide() {}

    /** All pages. */
    public static List<GuidePage> pages() {
        return NAMES.stream().map(name -> new GuidePage(name, read(name))).toList();
    }

    /**
     * The pages that these words ask for: the one of that name, or else those whose question or
     * text holds every word.
     */
    public static List<GuidePage> asked(String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        List<GuidePage> all = pages();
        List<GuidePage> named = all.stream().filter(p -> p.name().equals(wanted)).toList();
        if (!named.isEmpty() || wanted.isEmpty()) {
            return named;
        }
        List<String> each = Arrays.asList(wanted.split("[\\s-]+"));
        return Stream.of(holding(all, each, true), holding(all, each, false))
                .filter(found -> !found.isEmpty())
                .findFirst()
                .orElse(List.of());
    }

    private static List<GuidePage> holding(
            List<GuidePage> pages, List<String> words, boolean inQuestion) {
        return pages.stream()
                .filter(
                        page -> {
                            String text =
                                    (inQuestion ? page.question() : page.text())
                                            .toLowerCase(Locale.ROOT);
                            return words.stream().allMatch(text::contains);
                        })
                .toList();
    }

    private static String read(String name) {
        String at = name + ".md";
        try (InputStream in = requireNonNull(Guide.class.getResourceAsStream(at), at)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}

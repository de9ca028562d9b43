package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;

import stillturning.cli.joint.JointText;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.dossier.JointWork;

/**
 * The results kept in {@code reports} are what the program makes of Sandpiper today. No proof that
 * they are right: a call for somebody to look when they change. Renew them with {@code mvn -q test
 * -Dtest=FrozenReportsTest -Dreports.renew=true}, and read the difference.
 */
class FrozenReportsTest {

    private static final Path REPORTS = Path.of("reports").toAbsolutePath();
    private static final boolean RENEW = Boolean.getBoolean("reports.renew");

    @TempDir private Path here;

    /** A file and the words of the command whose output it keeps. */
    record Kept(String file, List<String> words) {}

    static List<Kept> kept() {
        return List.of(
                new Kept("sandpiper-decide.txt", List.of("decide")),
                new Kept("sandpiper-break.txt", List.of("break")),
                new Kept("sandpiper-cases.txt", List.of("break", "--cases")),
                new Kept(
                        "sandpiper-size.txt",
                        List.of("size", "--candidate", "solid-state-split-engine")),
                new Kept("sandpiper-causes.txt", List.of("break", "--causes")),
                new Kept("sandpiper-main-bus.txt", List.of("break", "--failure", "main bus")),
                new Kept(
                        "sandpiper-charging-lost.txt",
                        List.of("break", "--failure", "charging lost")));
    }

    @ParameterizedTest
    @MethodSource("kept")
    void textsAreWhatTheProgramPrintsToday(Kept kept) throws IOException {
        String[] words =
                Stream.concat(
                                Stream.of(kept.words().get(0), study()),
                                kept.words().stream().skip(1))
                        .toArray(String[]::new);
        hold(kept.file(), Session.in(here).run(words).out());
    }

    /** The search takes a minute: once for all that rests on it. */
    @Test
    void whatFailuresDoTogetherIsWhatTheProgramPrintsToday() throws IOException {
        StringWriter sink = new StringWriter();
        FoundStudy found = FoundStudy.sound(study(), context(sink));
        JointWork work =
                ResumedSearch.of(
                        found.study(), found.read().chances(), 2, Optional.empty(), context(sink));
        hold("sandpiper-pairs.txt", told(found, work, text -> text.pairs(false)));
        hold("sandpiper-latent.txt", told(found, work, text -> text.latent(false)));
        hold("sandpiper-run-up.txt", told(found, work, JointText::runUp));
    }

    private String told(FoundStudy found, JointWork work, Consumer<JointText> telling) {
        StringWriter out = new StringWriter();
        telling.accept(new JointText(found.study(), work, new Output(context(out))));
        return out.toString();
    }

    private CommandContext context(StringWriter out) {
        return new CommandContext(
                new PrintWriter(out),
                new PrintWriter(out),
                new BufferedReader(new StringReader("")),
                false,
                false,
                here);
    }

    @Test
    void thePageIsWhatTheProgramWritesToday() throws IOException {
        Path page = here.resolve("sandpiper.html");
        Session.in(here).run("explain", study(), "--html", page.toString());
        hold("sandpiper.html", Files.readString(page));
    }

    @Test
    void thePlotIsWhatTheProgramDrawsToday() throws IOException {
        Path plot = here.resolve("plot.svg");
        Session.in(here)
                .run(
                        "break",
                        study(),
                        "--candidate",
                        "one-battery-engine-bus",
                        "--failure",
                        "main bus short",
                        "--plot",
                        plot.toString());
        hold("sandpiper-main-bus.svg", Files.readString(plot));
    }

    private static String study() {
        return Session.ARCHITECTURES.resolve("sandpiper").toString();
    }

    private static void hold(String file, String today) throws IOException {
        Path kept = REPORTS.resolve(file);
        if (RENEW) {
            Files.writeString(kept, today);
        }
        String then = Files.readString(kept);
        if (!then.equals(today)) {
            assertEquals(firstDifference(then, today), firstDifference(today, then), file);
        }
    }

    /** The first line in which two texts differ, so that a failure can be read. */
    private static String firstDifference(String text, String other) {
        List<String> lines = text.lines().toList();
        List<String> others = other.lines().toList();
        int line = 0;
        while (line < Math.min(lines.size(), others.size())
                && lines.get(line).equals(others.get(line))) {
            line++;
        }
        String found = line < lines.size() ? lines.get(line) : "";
        return "line " + (line + 1) + ": " + found.substring(0, Math.min(400, found.length()));
    }
}

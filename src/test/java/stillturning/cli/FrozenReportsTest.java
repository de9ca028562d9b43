package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/**
 * The results kept in {@code reports} are what the program makes of Sandpiper today. No proof that
 * they are right: a call for somebody to look when they change. Renew them with {@code mvn -q test
 * -Pthorough -Dtest=FrozenReportsTest -Dreports.renew=true}, and read the difference.
 */
class FrozenReportsTest {

    private static final Path REPORTS = Path.of("reports").toAbsolutePath();
    private static final boolean RENEW = Boolean.getBoolean("reports.renew");

    @TempDir private Path here;

    /** A file and the words of the command whose output it keeps. */
    record Kept(String file, List<String> words) {}

    /** Those that are told longest last. */
    static Stream<Kept> kept() {
        return Stream.of(
                        new Kept("sandpiper-decide.txt", List.of("decide")),
                        new Kept(
                                "sandpiper-main-bus.txt",
                                List.of("break", "--failure", "main bus")),
                        new Kept(
                                "sandpiper-charging-lost.txt",
                                List.of("break", "--failure", "charging lost")),
                        new Kept(
                                "sandpiper-size.txt",
                                List.of("size", "--candidate", "solid-state-split-engine")),
                        new Kept("sandpiper-cases.txt", List.of("break", "--cases")),
                        new Kept("sandpiper-causes.txt", List.of("break", "--causes")),
                        new Kept(
                                "sandpiper-between.txt",
                                List.of(
                                        "decide",
                                        "--between",
                                        "split-batteries",
                                        "solid-state-split-engine")),
                        new Kept("sandpiper-break.txt", List.of("break")))
                .limit(Effort.cases(4, 8));
    }

    @ParameterizedTest
    @MethodSource("kept")
    void textsAreWhatTheProgramPrintsToday(Kept kept) throws IOException {
        List<String> options = kept.words().subList(1, kept.words().size());
        holdWhatIsPrinted(kept.file(), kept.words().get(0), options.toArray(new String[0]));
    }

    /** The search takes a minute a candidate: of one, and once for all that rests on it. */
    @Thorough
    @Test
    void whatFailuresDoTogetherIsWhatTheProgramPrintsToday() throws IOException {
        String searched = here.resolve("searched.json").toString();
        holdWhatIsPrinted(
                "sandpiper-pairs.txt",
                "break",
                "--candidate",
                "split-batteries",
                "--pairs",
                "--resume",
                searched);
        holdWhatIsPrinted(
                "sandpiper-latent.txt",
                "break",
                "--candidate",
                "split-batteries",
                "--latent",
                "--resume",
                searched);
        holdWhatIsPrinted(
                "sandpiper-run-up.txt",
                "run-up",
                "--candidate",
                "split-batteries",
                "--resume",
                searched);
    }

    /** Enough for a front with a surprise; every layout of it is read and assessed again today. */
    private static final String LAYOUTS = "300";

    @Thorough
    @Test
    void whatElseWasLookedAtIsWhatTheProgramMakesOfItToday() throws IOException {
        Path found = here.resolve("layouts.json");
        Path kept = REPORTS.resolve("sandpiper-layouts.json");
        if (RENEW) {
            Session.in(here)
                    .run("explore", study(), "--layouts", LAYOUTS, "--keep", found.toString());
            Files.copy(found, kept, StandardCopyOption.REPLACE_EXISTING);
        }
        Files.copy(kept, found, StandardCopyOption.REPLACE_EXISTING);
        holdWhatIsPrinted("sandpiper-explored.txt", "explore", "--again", found.toString());
    }

    /** More than this nobody reads. */
    private static final int MOST_PAGES = 40;

    /** The document as a counsellor gets it. */
    private void holdTheDocument() throws IOException {
        Path paper = here.resolve("sandpiper.pdf");
        Session.in(here).run("explain", study(), "--date", "2030-06-15", "--pdf", paper.toString());
        try (PDDocument read = Loader.loadPDF(paper.toFile())) {
            assertTrue(read.getNumberOfPages() <= MOST_PAGES, read.getNumberOfPages() + " pages");
            String first = page(read, 1);
            assertTrue(first.contains("still breaks or cannot do"), first);
            assertTrue(page(read, 2).contains("Fingerprint of the input files"), page(read, 2));
            assertTrue(page(read, 3).contains("Contents"), page(read, 3));
        }
        Path kept = REPORTS.resolve("sandpiper.pdf");
        if (RENEW) {
            Files.copy(paper, kept, StandardCopyOption.REPLACE_EXISTING);
        }
        assertArrayEquals(Files.readAllBytes(kept), Files.readAllBytes(paper));
    }

    private static String page(PDDocument read, int number) throws IOException {
        PDFTextStripper stripper = new PDFTextStripper();
        stripper.setStartPage(number);
        stripper.setEndPage(number);
        return stripper.getText(read);
    }

    private void holdWhatIsPrinted(String file, String command, String... options)
            throws IOException {
        String[] words =
                Stream.concat(Stream.of(command, study()), Stream.of(options))
                        .toArray(String[]::new);
        Ran ran = Session.in(here).run(words);
        assertEquals(command.equals("decide") ? ExitCode.FINE : ran.code(), ran.code(), ran.err());
        hold(file, ran.out());
    }

    @Thorough
    @Test
    void thePageIsWhatTheProgramWritesToday() throws IOException {
        Path page = here.resolve("sandpiper.html");
        Session.in(here).run("explain", study(), "--html", page.toString());
        hold("sandpiper.html", Files.readString(page));
        holdTheDocument();
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

package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDRectangle;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.model.goal.CriterionName;
import stillturning.report.Cautions;
import stillturning.report.ResultText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ExplainCommandTest {

    /** What no printer reaches, 4 mm (pt). */
    private static final double MARGIN = 4 / 25.4 * 72;

    @TempDir private Path here = Path.of("");

    @BeforeEach
    void aSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    @Test
    void thePageIsWrittenWhereOneStandsAndTheRankingIsShown() throws IOException {
        Ran ran = Session.in(here).run("explain", "small");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("\nWritten: small.html\n"), ran.out());
        assertTrue(ran.out().contains("\nRanking\n"), ran.out());
        assertTrue(ran.out().replaceAll("\\s+", " ").endsWith(Cautions.SHORT + " "), ran.out());
        String page = Files.readString(here.resolve("small.html"));
        assertTrue(page.contains("One bus, second feeds from the battery"), page);
        assertTrue(page.contains(Cautions.inFull(true).get(0)));
    }

    @Thorough
    @Test
    void aPageOfItsOwnIsReplacedByTheSameBytes() throws IOException {
        Session.in(here).run("explain", "small");
        byte[] first = Files.readAllBytes(here.resolve("small.html"));
        assertEquals(ExitCode.FINE, Session.in(here).run("explain", "small").code());
        assertArrayEquals(first, Files.readAllBytes(here.resolve("small.html")));
    }

    @Thorough
    @Test
    void aStrangersFileIsKeptUnlessForced() throws IOException {
        Path page = Files.writeString(here.resolve("mine.html"), "<p>my own words</p>");
        Ran ran = Session.in(here).run("explain", "small", "--html", "mine.html");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(
                ran.err().contains("mine.html is there already and was not written by this"),
                ran.err());
        assertEquals("<p>my own words</p>", Files.readString(page));
        Ran forced = Session.in(here).run("explain", "small", "--html", "mine.html", "--force");
        assertEquals(ExitCode.FINE, forced.code(), forced.err());
        assertFalse(Files.readString(page).contains("my own words"));
    }

    @Test
    void aFolderInTheWayOrAMissingOneIsTold() throws IOException {
        Files.createDirectories(here.resolve("folder.html"));
        Ran inTheWay = Session.in(here).run("explain", "small", "--html", "folder.html");
        assertEquals(ExitCode.BAD_INPUT, inTheWay.code());
        Ran missing = Session.in(here).run("explain", "small", "--html", "no/such/page.html");
        assertEquals(ExitCode.BAD_INPUT, missing.code());
        assertTrue(missing.err().contains("there is no folder "), missing.err());
        assertFalse(missing.err().contains("internal"), missing.err());
    }

    /**
     * The work takes minutes; a study with a candidate that nobody could assess shows the order.
     */
    @Test
    void aMissingFolderIsToldBeforeTheWork() throws IOException {
        Ran missing = Session.in(here).run("explain", "nowhere", "--pdf", "no/such/paper.pdf");
        assertEquals(ExitCode.BAD_INPUT, missing.code());
        assertTrue(missing.err().contains("; make it, or name another file with --pdf"));
    }

    @Thorough
    @Test
    void jsonIsThatOfTheRanking() {
        String json = Session.in(here).run("explain", "small", "--json").out();
        String decided = Session.in(here).run("decide", "small", "--json").out();
        // the answer on one screen is the terminal's; the page has its own first pages
        assertEquals(
                decided.substring(0, decided.indexOf("\"answer\"")),
                json.substring(0, json.indexOf("\"answer\"")));
        assertTrue(json.contains("\"candidates\""), json);
        assertTrue(Files.exists(here.resolve("small.html")));
    }

    private static String text(Path pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            return new PDFTextStripper().getText(read).replaceAll("\\s+", " ");
        }
    }

    private static String shown(JsonNode value) {
        CriterionName name =
                Stream.of(CriterionName.values())
                        .filter(n -> key(n).equals(value.get("criterion").asString()))
                        .findFirst()
                        .orElseThrow();
        return ResultText.value(name, value.get("value").asDouble(), "EUR");
    }

    private static String key(CriterionName name) {
        return name.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private Ran onPaper(String file, String... more) {
        List<String> words =
                Stream.concat(
                                Stream.of(
                                        "explain", "small", "--pdf", file, "--date", "2030-06-15"),
                                Stream.of(more))
                        .toList();
        return Session.in(here).run(words.toArray(String[]::new));
    }

    @Thorough
    @Test
    void theDocumentSaysWhatTheJsonSays() throws IOException {
        Ran ran = onPaper("small.pdf");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("Written: small.pdf"), ran.out());
        assertFalse(Files.exists(here.resolve("small.html")));
        String text = text(here.resolve("small.pdf"));
        JsonNode decided =
                JsonMapper.shared()
                        .readTree(Session.in(here).run("decide", "small", "--json").out());
        assertTrue(text.contains("2030-06-15"), text);
        for (JsonNode candidate : decided.get("candidates")) {
            String title = candidate.get("title").asString();
            assertTrue(text.contains(title), title);
            for (JsonNode value : candidate.get("values")) {
                String shown = shown(value);
                assertTrue(text.contains(shown), shown + " in " + text);
            }
        }
    }

    /** Measured on one day, and shown beside what was predicted on page and paper. */
    @Thorough
    @Test
    void whatWasMeasuredStandsBesideWhatWasPredicted() throws IOException {
        String[] record = {"record", "small", "--candidate", "one-bus"};
        Session.in(here).run(record[0], record[1], record[2], record[3], "--form", "bench.yaml");
        Path form = here.resolve("bench.yaml");
        Session.change(form, "date: ", "date: 2026-05-17");
        Session.change(form, "by: ", "by: a builder");
        Session.change(form, "  radio: ", "  radio: 2.9 A at 12.4 V");
        Files.writeString(form, Session.text(form).replaceFirst("result: ", "result: failed"));
        Session.in(here).run(record[0], record[1], record[2], record[3], "bench.yaml");
        Ran ran = onPaper("built.pdf", "--html", "built.html");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        for (String told :
                List.of(
                        text(here.resolve("built.pdf")),
                        Files.readString(here.resolve("built.html")))) {
            assertTrue(told.contains("As built: predicted and measured"), told);
            assertTrue(told.contains("Measured on 2026-05-17 by a builder."), told);
            assertTrue(told.contains("0 passed, 1 failed"), told);
            assertTrue(told.contains("1 of 1 measured values does not keep"), told);
            assertTrue(told.contains("1.50 A") && told.contains("2.57 A"), told);
        }
    }

    /** ANSI/ASME Y14.1 for Letter, ISO 216 for the A5 of cards; both from memory. */
    private static void assertSheets(Path pdf) throws IOException {
        try (PDDocument read = Loader.loadPDF(pdf.toFile())) {
            List<String> sizes = new ArrayList<>();
            for (PDPage page : read.getPages()) {
                PDRectangle box = page.getMediaBox();
                sizes.add(Math.round(box.getWidth()) + " x " + Math.round(box.getHeight()));
            }
            assertEquals("612 x 792", sizes.get(0));
            assertEquals("420 x 595", sizes.get(sizes.size() - 1));
            List<String> known = List.of("612 x 792", "792 x 612", "420 x 595");
            assertTrue(known.containsAll(sizes), sizes.toString());
            List<String> outside = new ArrayList<>();
            new PDFTextStripper() {
                @Override
                protected void processTextPosition(TextPosition letter) {
                    double right = letter.getXDirAdj() + letter.getWidthDirAdj();
                    if (!letter.getUnicode().isBlank()
                            && (letter.getXDirAdj() < MARGIN
                                    || right > letter.getPageWidth() - MARGIN
                                    || letter.getYDirAdj() < MARGIN
                                    || letter.getYDirAdj() > letter.getPageHeight() - MARGIN)) {
                        outside.add(letter.getUnicode() + " on page " + getCurrentPageNo());
                    }
                }
            }.getText(read);
            assertEquals(List.of(), outside);
        }
    }

    @Thorough
    @Test
    void theSameStudyAndDayGiveTheSameDocumentOnEitherPaper() throws IOException {
        onPaper("one.pdf", "--paper", "letter");
        assertSheets(here.resolve("one.pdf"));
        byte[] first = Files.readAllBytes(here.resolve("one.pdf"));
        Ran again = onPaper("one.pdf", "--paper", "letter");
        assertEquals(ExitCode.FINE, again.code(), again.err());
        assertArrayEquals(first, Files.readAllBytes(here.resolve("one.pdf")));
    }

    @Test
    void whatCannotBeSetIsRefusedBeforeTheWork() {
        assertTrue(
                Session.in(here)
                        .run("explain", "small", "--pdf", "a.pdf", "--paper", "a0")
                        .err()
                        .contains("a4 or letter"));
        assertTrue(
                Session.in(here)
                        .run("explain", "small", "--pdf", "a.pdf", "--date", "June")
                        .err()
                        .contains("ISO 8601"));
        assertTrue(
                Session.in(here)
                        .run("explain", "small", "--paper", "letter")
                        .err()
                        .contains("need --pdf"));
        assertFalse(Files.exists(here.resolve("a.pdf")));
    }
}

package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.model.CriterionName;
import stillturning.report.Cautions;
import stillturning.report.ResultText;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class ExplainCommandTest {

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

    @Test
    void aPageOfItsOwnIsReplacedByTheSameBytes() throws IOException {
        Session.in(here).run("explain", "small");
        byte[] first = Files.readAllBytes(here.resolve("small.html"));
        assertEquals(ExitCode.FINE, Session.in(here).run("explain", "small").code());
        assertArrayEquals(first, Files.readAllBytes(here.resolve("small.html")));
    }

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
        assertTrue(missing.err().contains("cannot be written"), missing.err());
        assertFalse(missing.err().contains("internal"), missing.err());
    }

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

    @Test
    void theSameStudyAndDayGiveTheSameDocumentOnEitherPaper() throws IOException {
        onPaper("one.pdf", "--paper", "letter");
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

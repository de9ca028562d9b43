package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.report.Cautions;

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
        assertEquals(Session.in(here).run("decide", "small", "--json").out(), json);
        assertTrue(Files.exists(here.resolve("small.html")));
    }
}

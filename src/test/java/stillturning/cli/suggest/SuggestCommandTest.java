package stillturning.cli.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import tools.jackson.databind.JsonNode;

class SuggestCommandTest {

    @TempDir private Path here = Path.of("");

    /** Outside the study. */
    @TempDir private Path beside = Path.of("");

    @BeforeEach
    void copyTheStudy() throws IOException {
        try (var files = Files.list(Session.ARCHITECTURES.resolve("first-steps"))) {
            for (Path file : files.toList()) {
                Files.copy(file, here.resolve(file.getFileName()));
            }
        }
    }

    private Ran suggest(String... more) {
        String[] words = new String[more.length + 4];
        words[0] = "suggest";
        words[1] = here.toString();
        words[2] = "--candidate";
        words[3] = "one-bus";
        System.arraycopy(more, 0, words, 4, more.length);
        return Session.in(here).run(words);
    }

    @Test
    void aSuggestionIsToldAndSavedBesideTheOthersWhichStayAsTheyAre() throws Exception {
        String before = Files.readString(here.resolve("one-bus.yaml"));
        Ran ran =
                suggest(
                        "--failure",
                        "main bus short",
                        "--moves",
                        "1",
                        "--most",
                        "12",
                        "--save",
                        "1");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("1   Split the main bus in two"), ran.out());
        assertTrue(ran.out().contains("Mends it."), ran.out());
        assertTrue(ran.out().contains("No new trouble."), ran.out());
        assertTrue(ran.out().contains("Not tried: "), ran.out());
        assertTrue(ran.out().contains("simpler on paper is not yet"), ran.out());
        assertEquals(before, Files.readString(here.resolve("one-bus.yaml")));
        String saved = Files.readString(here.resolve("one-bus-changed.yaml"));
        assertTrue(saved.startsWith("candidate: One bus, changed           # everything"), saved);
        assertTrue(saved.contains("Split the main bus in two"), saved);
        Ran check = Session.in(here).run("check", here.toString());
        assertEquals(ExitCode.FINE, check.code(), check.out() + check.err());
    }

    @Thorough
    @Test
    void theLightestChangesAreKeptAndToldOnThePageWhereThatIsAskedFor() throws Exception {
        String kept = beside.resolve("mends.json").toString();
        Ran found = suggest("--lightest", "--moves", "1", "--most", "12", "--keep", kept, "--json");
        assertEquals(ExitCode.FINE, found.code(), found.err());
        JsonNode one = Session.tree(found.out()).get("candidates").get(0);
        assertEquals("one-bus", one.get("candidate").stringValue());
        JsonNode first = one.get("changes").get(0);
        String move = first.get("change").get("moves").get(0).stringValue();
        Session session = Session.in(here);
        Ran again = session.run("suggest", here.toString(), "--again", kept, "--json");
        assertEquals(found.out(), again.out());

        Path page = beside.resolve("page.html");
        String chapter = "What would mend what is wrong";
        Ran plain = session.run("explain", here.toString(), "--html", page.toString());
        assertTrue(plain.err().isEmpty(), plain.err());
        assertFalse(Files.readString(page).contains(chapter));
        session.run("explain", here.toString(), "--html", page.toString(), "--mends", kept);
        String with = Files.readString(page);
        assertTrue(with.contains(chapter));
        assertTrue(with.contains(move), move);
        assertTrue(with.contains("Not tried: "));
        assertTrue(with.contains(first.get("firstChoiceFor").get(0).stringValue()));

        Path study = here.resolve("study.yaml");
        Files.writeString(study, Files.readString(study) + "# later\n");
        Ran later = session.run("explain", here.toString(), "--mends", kept);
        assertRefused(later, "another state of the study; run suggest again");
    }

    @Test
    void whatCannotBeAskedIsRefusedWithTheChoice() throws IOException {
        Path notes = here.resolve("notes.json");
        Files.writeString(notes, "{}");
        assertRefused(suggest("--lightest", "--keep", notes.toString()), "holds no changes");
        assertRefused(suggest("--keep", "mends.json"), "add --lightest");
        assertRefused(suggest("--lightest", "--failure", "main bus"), "leave out --failure");
        assertRefused(Session.in(here).run("suggest", here.toString()), "name one candidate");
        assertRefused(suggest("--failure", "flux"), "no single failure of one-bus is called");
        assertRefused(suggest("--failure", "lights wire open"), "neither stops the engine");
        assertRefused(suggest("--requirement", "colour"), "names none of the requirements:");
        assertRefused(suggest("--moves", "7"), "--moves takes 1, 2 or 3");
        assertRefused(
                suggest("--failure", "main bus", "--requirement", "endurance"),
                "take one of --failure, --finding and --requirement");
    }

    private static void assertRefused(Ran ran, String because) {
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains(because), ran.err());
    }
}

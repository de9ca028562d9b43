package stillturning.cli.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

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

/** What a search found, told on the page. */
class ExploredChapterTest {

    private static final String CHAPTER = "What else was looked at";

    @TempDir private Path here = Path.of("");

    @BeforeEach
    void copyTheSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    private Ran run(String... words) {
        return Session.in(here).run(words);
    }

    private String page(String... more) throws Exception {
        String[] words = new String[more.length + 4];
        words[0] = "explain";
        words[1] = "small";
        words[2] = "--html";
        words[3] = "page.html";
        System.arraycopy(more, 0, words, 4, more.length);
        Ran ran = run(words);
        assertFalse(ran.out().isEmpty(), ran.err());
        return Files.readString(here.resolve("page.html"));
    }

    @Thorough
    @Test
    void whatIsKeptIsToldAgainAndOnlyWhereItIsAskedFor() throws Exception {
        Ran found =
                run(
                        "explore",
                        "small",
                        "--layouts",
                        "4",
                        "--keep",
                        "front.json",
                        "--pairs",
                        "--json");
        assertEquals(ExitCode.FINE, found.code(), found.err());
        JsonNode first = Session.tree(found.out()).get("front").get(0);
        assertTrue(first.get("endingPairs").isIntegralNumber(), found.out());
        assertTrue(first.get("wrongSizes").isIntegralNumber(), found.out());

        String without = page();
        assertFalse(without.contains(CHAPTER));
        String with = page("--explored", "front.json");
        assertTrue(with.contains(CHAPTER));
        assertTrue(with.contains("layout-1"));
        for (JsonNode change : first.get("changes")) {
            assertTrue(with.contains(change.stringValue()), change.stringValue());
        }
        assertTrue(with.contains("Pairs of failures were not asked about"));
        assertTrue(with.contains("Simpler on paper is not yet buildable"));

        Ran again = run("explore", "small", "--again", "front.json", "--pairs", "--json");
        assertEquals(found.out(), again.out());
        assertEquals(
                ExitCode.BAD_INPUT,
                run("explore", "small", "--again", "front.json", "--layouts", "4").code());

        Path study = here.resolve("small/study.yaml");
        Files.writeString(study, Files.readString(study) + "# later\n");
        Ran later = run("explain", "small", "--explored", "front.json");
        assertEquals(ExitCode.BAD_INPUT, later.code());
        assertTrue(later.err().contains("another state of the study"), later.err());
    }

    @Test
    void aFileThatHoldsSomethingElseIsNeitherReadNorReplaced() throws Exception {
        Files.writeString(here.resolve("notes.json"), "{\"kind\": \"notes\"}");
        for (Ran ran :
                new Ran[] {
                    run("explore", "small", "--layouts", "1", "--keep", "notes.json"),
                    run("explain", "small", "--explored", "notes.json")
                }) {
            assertEquals(ExitCode.BAD_INPUT, ran.code());
            assertTrue(ran.err().contains("holds no layouts"), ran.err());
        }
        assertEquals("{\"kind\": \"notes\"}", Files.readString(here.resolve("notes.json")));
    }
}

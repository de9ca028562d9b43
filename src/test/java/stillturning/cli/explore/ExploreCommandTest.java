package stillturning.cli.explore;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.assess.Assess;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.yaml.disk.FileClaim;
import tools.jackson.databind.JsonNode;

/** The search for simpler layouts, as somebody asks for it. */
class ExploreCommandTest {

    private static final String KEPT = "kept.json";

    @TempDir private Path here;

    @BeforeEach
    void copyTheSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    private Ran run(String... more) {
        List<String> words = new ArrayList<>(List.of("explore", "small"));
        words.addAll(List.of(more));
        return Session.in(here).run(words.toArray(String[]::new));
    }

    private static Map<String, Double> values(JsonNode layout) {
        Map<String, Double> values = new TreeMap<>();
        for (JsonNode value : layout.get("values")) {
            values.put(value.get("criterion").stringValue(), value.get("value").doubleValue());
        }
        return values;
    }

    /** The claims about a layout are those of its file, read and assessed by itself. */
    @Thorough
    @Test
    void whatIsFoundIsTheSameWhereItWentOnAndIsWhatItsSavedFileComesTo() throws Exception {
        String whole = run("--layouts", "6", "--json").out();
        run("--layouts", "4", "--resume", KEPT);
        Ran rest =
                run(
                        "--layouts",
                        "6",
                        "--resume",
                        KEPT,
                        "--json",
                        "--plot",
                        "front.svg",
                        "--save",
                        "layout-1");
        assertEquals(ExitCode.FINE, rest.code(), rest.err());
        assertEquals(whole, rest.out());

        JsonNode layout = Session.tree(whole).get("front").get(0);
        assertEquals("layout-1", layout.get("id").stringValue());
        assertFalse(layout.get("changes").isEmpty());
        Study saved = StudyReader.read(here.resolve("small")).study().orElseThrow();
        Study alone =
                new Study(
                        saved.id(),
                        saved.heading(),
                        saved.aircraft(),
                        saved.goals(),
                        List.of(saved.candidate("layout-1").orElseThrow()));
        var appraisal = Assess.of(alone).appraisals().get(0);
        assertTrue(appraisal.met().stream().allMatch(met -> met.met()));
        Map<String, Double> claimed = values(layout);
        appraisal
                .measures()
                .values()
                .forEach(
                        (criterion, value) ->
                                assertEquals(
                                        value,
                                        claimed.entrySet().stream()
                                                .filter(
                                                        e ->
                                                                e.getKey()
                                                                        .replaceAll("[^a-z]", "")
                                                                        .equalsIgnoreCase(
                                                                                criterion
                                                                                        .name()
                                                                                        .replace(
                                                                                                "_",
                                                                                                "")))
                                                .findFirst()
                                                .orElseThrow()
                                                .getValue(),
                                        1e-5 * Math.abs(value) + 1e-9,
                                        criterion.words()));
        assertTrue(Files.readString(here.resolve("front.svg")).contains("layout-1"));
    }

    @Test
    void theAnswerSaysWhatWasFoundWhatWasDrawnAndWhatWasNotLookedAt() {
        String told = run("--layouts", "4").out();
        for (String part :
                List.of(
                        "outdone by nothing that was looked at",
                        "What was drawn, and how far it is from the front",
                        "The search ended before everything was looked at",
                        "Pairs of failures were not asked about",
                        "Simpler on paper is not yet buildable",
                        "An aid for comparing designs")) {
            assertTrue(told.replaceAll("\\s+", " ").contains(part), told);
        }
        assertTrue(told.lines().allMatch(line -> line.length() <= 110), told);
    }

    @Test
    void aFileThatAnotherCommandHasIsRefused() throws Exception {
        FileClaim other = FileClaim.on(here.resolve("." + KEPT + ".lock")).orElseThrow();
        try {
            Ran ran = run("--layouts", "1", "--resume", KEPT);
            assertEquals(ExitCode.BAD_INPUT, ran.code());
            assertTrue(ran.err().contains("is written by another search"), ran.err());
        } finally {
            other.end();
        }
    }

    @ParameterizedTest
    @CsvSource({
        "--by speed, is no criterion",
        "--changes 0, must be above 0",
        "--layouts 0, must be above 0",
        "--plot front.bmp, ends in .svg or .png"
    })
    void whatCannotBeMeantIsRefusedBeforeAnythingIsComputed(String words, String told) {
        Ran ran = run(words.split(" ", -1));
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains(told), ran.err());
    }
}

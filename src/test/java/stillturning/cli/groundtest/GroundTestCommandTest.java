package stillturning.cli.groundtest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.files.SampleStudy;
import tools.jackson.databind.JsonNode;

/** The plan of the ground test, as somebody asks for it. */
class GroundTestCommandTest {

    private static final String[] ASK = {"ground-test", "small", "--candidate", "one-bus"};

    @TempDir private Path here;

    @BeforeEach
    void copyTheSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    private Ran run(String... more) {
        List<String> words = new ArrayList<>(List.of(ASK));
        words.addAll(List.of(more));
        Ran ran = Session.in(here).run(words.toArray(String[]::new));
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        return ran;
    }

    /** One bar feeds everything: its only battery lead takes all of it along. */
    @Test
    void thePlanSaysWhatToDoWhatMustHappenAndWhatMustRead() {
        String told = run().out();
        assertTrue(told.contains("Stage 1: engine at rest"), told);
        assertTrue(told.contains("none of the"), told);
        assertTrue(told.contains("take out battery"), told);
        assertTrue(told.contains("____\u00A0V"), told);
        String flowing = told.replaceAll("\\s+", " ");
        assertTrue(flowing.contains(" Volts are against the structure: "), told);
        assertTrue(flowing.contains("air batteries that were just charged first"), told);
        assertTrue(told.contains("chafed to ground"), told);
        assertTrue(told.contains("An aid for comparing designs"), told);
        assertTrue(told.lines().allMatch(line -> line.length() <= 100), told);
    }

    /** A meter with its minus on the other system's ground would show nothing. */
    @Test
    void thePlanNamesTheGroundOfEachSystem() throws IOException {
        SampleStudy.read(
                Files.createDirectory(here.resolve("apart")), SampleStudy.STUDY, SampleStudy.APART);
        Ran ran = Session.in(here).run("ground-test", "apart");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        String flowing = ran.out().replaceAll("\\s+", " ");
        assertTrue(
                flowing.contains(
                        "Volts are against the engine ground or the radio ground, whichever leads"
                                + " back what is measured"),
                flowing);
    }

    /** What people, spreadsheets and programs read is the same plan. */
    @Test
    void theTablesHoldEveryReadingAndEveryFailureOfTheJson() {
        JsonNode plan = Session.tree(run("--json", "--csv", "test").out()).get("plans").get(0);
        int readings = 0;
        Set<String> failures = new TreeSet<>();
        for (JsonNode stage : plan.get("stages")) {
            readings += stage.get("readings").size();
            for (JsonNode step : stage.get("steps")) {
                readings += step.get("readings").size();
                step.get("shows").forEach(name -> failures.add(name.stringValue()));
            }
        }
        plan.get("notShown").forEach(not -> failures.add(not.get("failure").stringValue()));
        Path folder = here.resolve("test");
        String form = Session.text(folder.resolve("ground-test.csv"));
        assertEquals(readings + 1, form.lines().count());
        assertTrue(
                form.startsWith(
                        "candidate,step,aircraft,do,must happen,measure,unit,predicted,least,most,"
                                + "measured,happened\r\n"),
                form);
        String shown = Session.text(folder.resolve("ground-test-failures.csv"));
        assertEquals(failures.size() + 1, shown.lines().count());
        assertTrue(Files.exists(folder));
    }

    @Thorough
    @Test
    void thePageAndTheDocumentHoldThePlanOfTheFirstInTheRanking() throws IOException {
        Ran ran = Session.in(here).run("explain", "small", "--ground-test", "--html", "page.html");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        String page = Session.text(here.resolve("page.html"));
        assertTrue(page.contains("<a href=\"#ground-test\">Ground test plan</a>"));
        String chapter = page.substring(page.indexOf("<section id=\"ground-test\">"));
        assertTrue(chapter.contains("Stage 1: engine at rest"), chapter);
        assertTrue(chapter.contains("Not shown on the ground"), chapter);
    }
}

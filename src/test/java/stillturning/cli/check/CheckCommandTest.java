package stillturning.cli.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.report.Cautions;
import tools.jackson.databind.JsonNode;

class CheckCommandTest {

    @TempDir private Path here = Path.of("");

    private Ran check(String... options) {
        String[] words = new String[options.length + 1];
        words[0] = "check";
        System.arraycopy(options, 0, words, 1, options.length);
        return Session.in(here).run(words);
    }

    @Test
    void aSoundStudySaysSoAndShowsNormalFlightAndGuesses() {
        Session.in(here).copyOfFirstSteps("small");
        Ran ran = check("small");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertEquals("First steps: no problem in 2 candidates", ran.lines().get(0));
        assertTrue(ran.out().contains("Normal flight, nothing wrong"), ran.out());
        // common practice, no published source: an alternator holds its bus near 14 V
        assertTrue(ran.out().contains("main-bus\u00a014."), ran.out());
        assertTrue(ran.out().matches("(?s).*loads\\.computer\\.draws +4 A\n.*"), ran.out());
        assertTrue(ran.out().replaceAll("\\s+", " ").contains(Cautions.SHORT), ran.out());
        assertEquals("", ran.err());
    }

    @Test
    void everyProblemIsShownWithItsLineAndACaret() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("study.yaml"), "nominal: 14 V", "nominal: 14");
        Session.change(
                folder.resolve("one-bus.yaml"), "from main-bus, breaker 5 A", "from main-bud");
        Ran ran = check("small");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.out().contains("study.yaml:6:12: nominal: "), ran.out());
        List<String> lines = ran.lines();
        int at = lines.indexOf("    nominal: 14");
        assertEquals("               ^", lines.get(at + 1));
        assertTrue(ran.out().matches("(?s).*\n\\d+ problems?\n.*"), ran.out());
        assertFalse(ran.out().contains("Normal flight"), ran.out());
    }

    @Test
    void anEngineThatDoesNotRunWithNothingWrongIsSeen() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("study.yaml"), "minimum: 7 V", "minimum: 18 V");
        Ran ran = check("small");
        assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code());
        assertTrue(ran.out().contains("STOPS"), ran.out());
    }

    @Test
    void aCueThatShowsAlthoughNothingIsWrongIsNamed() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("one-bus.yaml"), "below: 13 V", "below: 15 V");
        Ran ran = check("small");
        assertEquals(ExitCode.FINE, ran.code());
        assertTrue(
                ran.lines().stream()
                        .anyMatch(l -> l.startsWith("One bus ") && l.endsWith("low-voltage")),
                ran.out());
    }

    @Test
    void whatHappensWithNothingWrongIsAFinding() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("one-bus.yaml"), "bus, breaker 5 A", "bus, breaker 1 A");
        Ran ran = check("small");
        assertEquals(ExitCode.FINE, ran.code());
        String finding = "Unwell with nothing wrong\nThis happens although nothing fails";
        assertTrue(ran.out().contains(finding), ran.out());
        assertTrue(ran.out().matches("(?s).*\n  One bus\n    after [^\n]*-breaker.*"), ran.out());
        Ran decided = Session.in(here).run("decide", "small", "--full");
        assertTrue(decided.out().contains(finding), decided.out());
        JsonNode json = Session.tree(check("small", "--json").out());
        assertTrue(json.get("normalFlight").get(1).get("withNothingWrong").size() > 0);
    }

    /** What is said alike of several candidates stands once, with every place. */
    @Test
    void aRemarkThatSeveralFilesShareIsSaidOnce() {
        String said = "nobody presses the starter";
        Ran fresh = Session.in(here).run("new", "fresh");
        assertEquals(ExitCode.FINE, fresh.code(), fresh.err());
        String told = check("fresh").out().replaceAll("\\s+", " ");
        assertEquals(told.indexOf(said), told.lastIndexOf(said), told);
        assertTrue(told.contains("; so at main-bus.yaml:3:1, two-engine-buses"), told);
    }

    @Test
    void anEngineThatRunsDryWithNothingWrongIsAnExitCode() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("one-bus.yaml"), "rating: 30 A", "rating: 8 A");
        Ran ran = check("small");
        assertEquals(ExitCode.REQUIREMENT_MISSED, ran.code());
        assertTrue(ran.out().contains("keeps the engine running for"), ran.out());
    }

    @Test
    void expandedShowsThePartsOfEveryLine() {
        Session.in(here).copyOfFirstSteps("small");
        String out = check("small", "--expanded").out();
        assertTrue(out.contains("one-bus: what its lines became"), out);
        assertTrue(out.contains("\n  feeds.radio\n    radio-breaker (breaker)\n"), out);
        assertTrue(out.contains("rating 5 A"), out);
    }

    @Test
    void jsonHoldsProblemsWithTheirPlaces() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("study.yaml"), "nominal: 14 V", "nominal: 14");
        Ran ran = check("small", "--json");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        JsonNode problem = Session.tree(ran.out()).get("problems").get(0);
        assertEquals("study.yaml", problem.get("file").asString());
        assertEquals(6, problem.get("line").asInt());
        assertEquals("nominal", problem.get("path").asString());
    }

    @Test
    void jsonHoldsNormalFlightAndValues() {
        Session.in(here).copyOfFirstSteps("small");
        JsonNode json = Session.tree(check("small", "--json").out());
        assertEquals(0, json.get("problems").size());
        assertTrue(json.get("normalFlight").get(0).get("engineRuns").asBoolean());
        assertTrue(json.get("values").size() > 20, json.toString());
        assertEquals(Cautions.SHORT, json.get("caution").asString());
    }

    @Test
    void whatIsNoStudyIsToldWithoutAStackTrace() throws IOException {
        Files.createDirectories(here.resolve("empty-folder"));
        Files.writeString(here.resolve("a-file"), "study: x");
        folderWith("empty-study", new byte[0]);
        folderWith("garbage", garbage());
        folderWith("a-list", "- 1\n- 2\n".getBytes(StandardCharsets.UTF_8));
        for (String name :
                List.of("missing", "empty-folder", "a-file", "empty-study", "garbage", "a-list")) {
            for (String command : List.of("check", "decide", "break", "explain")) {
                Ran ran = Session.in(here).run(command, name);
                String told = command.equals("check") ? ran.out() : ran.err();
                assertEquals(ExitCode.BAD_INPUT, ran.code(), () -> command + " " + name);
                assertTrue(told.contains("1 problem") || told.contains(" problems"), told);
                assertFalse(told.contains("\tat "), told);
                assertFalse(told.contains("internal"), told);
                assertFalse(told.contains("\u001B"), told);
            }
        }
    }

    private void folderWith(String name, byte[] study) throws IOException {
        Path folder = Files.createDirectories(here.resolve(name));
        Files.write(folder.resolve("study.yaml"), study);
    }

    private static byte[] garbage() {
        byte[] bytes = new byte[4096];
        new SplittableRandom(20).nextBytes(bytes);
        return bytes;
    }

    @Test
    void aPathThatCanBeNoneIsRefused() {
        Ran ran = check("a\u0000b");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("that can be no folder's name"), ran.err());
    }

    @Test
    void theDemoStudyIsSoundAndItsLinesFitATerminal() {
        Ran ran = check(Session.ARCHITECTURES.resolve("sandpiper").toString());
        assertEquals(ExitCode.FINE, ran.code(), ran.out());
        assertTrue(ran.lines().stream().allMatch(l -> l.length() <= 120), ran.out());
        assertFalse(ran.out().contains("\u001B"));
    }
}

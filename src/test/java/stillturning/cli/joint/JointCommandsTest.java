package stillturning.cli.joint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringReader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import javax.xml.parsers.DocumentBuilderFactory;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.xml.sax.InputSource;
import stillturning.bench.Thorough;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.yaml.disk.FileClaim;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;

/** Failures together and hidden, as somebody asks for them. */
class JointCommandsTest {

    private static final String KEPT = "kept.json";

    @TempDir private Path here;

    @BeforeEach
    void copyTheSmallStudy() {
        Session.in(here).copyOfFirstSteps("small");
    }

    private Ran run(String... words) {
        return Session.in(here).run(words);
    }

    @Thorough
    @Test
    void everyChanceStandsWithItsRangeAndItsBasis() {
        Ran ran = run("break", "small", "--pairs", "--candidate", "one-bus");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        List<String> lines = ran.lines();
        for (int i = 0; i < lines.size(); i++) {
            if (lines.get(i).contains("mean over the rates' spread")) {
                assertTrue(lines.get(i).contains(", exact"), lines.get(i));
                assertTrue(lines.get(i + 1).contains(" to "), lines.get(i + 1));
            }
        }
        assertTrue(ran.out().contains("upper bound"), ran.out());
        assertTrue(ran.out().contains("certify nothing"), ran.out());
    }

    @Thorough
    @Test
    void aCardNamesWhatToSetWhatToLookForAndWhatToDoOtherwise() {
        Ran ran = run("run-up", "small", "--candidate", "one-bus");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        for (String wanted :
                List.of(
                        "Run-up card:",
                        "not approved data",
                        "1  Pull",
                        "see: engine runs on",
                        "if engine stops: do not fly, look at",
                        "back:",
                        "Last, before take-off",
                        "Not revealed by any check")) {
            assertTrue(ran.out().contains(wanted), wanted);
        }
        assertFalse(ran.out().toLowerCase(Locale.ROOT).contains("safe"), ran.out());
    }

    @Thorough
    @Test
    void latentFailuresThatEndNothingAreCountedUnlessAllAreAskedFor() {
        String[] one = {"--candidate", "one-bus", "--resume", KEPT};
        String some = run("break", "small", "--latent", one[0], one[1], one[2], one[3]).out();
        String all =
                run("break", "small", "--latent", "--all", one[0], one[1], one[2], one[3]).out();
        assertTrue(some.contains("--all lists them"), some);
        assertFalse(all.contains("--all lists them"), all);
        assertTrue(all.length() > some.length());
    }

    @Thorough
    @Test
    void noLineIsLongerThanATerminalIsWide() {
        String[] kept = {"--resume", KEPT};
        Stream.of(
                        run("break", "small", "--pairs", "--all", kept[0], kept[1]),
                        run("break", "small", "--latent", kept[0], kept[1]),
                        run("run-up", "small", kept[0], kept[1]),
                        run("break", "small", "--causes"))
                .flatMap(ran -> ran.lines().stream())
                .forEach(line -> assertTrue(line.length() <= 100, line));
    }

    @Thorough
    @Test
    void workThatWasKeptBringsTheSameAndIsNotDoneAgain() throws IOException {
        String[] words = {"break", "small", "--pairs", "--resume", KEPT};
        String fresh = run(words).out();
        String file = Files.readString(here.resolve(KEPT));
        String halved = halved(file);
        Files.writeString(here.resolve(KEPT), halved);
        assertEquals(fresh, run(words).out());
        assertEquals(file, Files.readString(here.resolve(KEPT)));
    }

    /** The file as it may have been when somebody called the work off. */
    private static String halved(String file) {
        JsonMapper mapper = JsonMapper.builder().build();
        JsonNode kept = mapper.readTree(file);
        for (JsonNode blocks : kept.get("candidates")) {
            ArrayNode all = (ArrayNode) blocks;
            for (int i = all.size() - 1; i > 0; i -= 2) {
                all.remove(i);
            }
        }
        return mapper.writeValueAsString(kept);
    }

    @Test
    void twoSearchesNeverWriteOneFile() throws IOException {
        String[] words = {"break", "small", "--pairs", "--order", "1", "--resume", KEPT};
        FileClaim other = FileClaim.on(here.resolve("." + KEPT + ".lock")).orElseThrow();
        try {
            Ran ran = run(words);
            assertEquals(ExitCode.BAD_INPUT, ran.code());
            assertTrue(ran.err().contains(KEPT + " is written by another search"), ran.err());
            assertFalse(Files.exists(here.resolve(KEPT)));
        } finally {
            other.end();
        }
        assertEquals(ExitCode.FINE, run(words).code());
        assertFalse(Files.exists(here.resolve("." + KEPT + ".lock")));
    }

    @Test
    void workOfAnotherStudyIsRefusedByNameAndLeftAsItIs() throws IOException {
        assertEquals(
                ExitCode.FINE,
                run("break", "small", "--pairs", "--order", "1", "--resume", KEPT).code());
        String before = Files.readString(here.resolve(KEPT));
        Session.change(here.resolve("small/study.yaml"), "study: First", "study: Second");
        Ran ran = run("break", "small", "--pairs", "--resume", KEPT);
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains(KEPT + " belongs to other inputs"), ran.err());
        assertEquals(before, Files.readString(here.resolve(KEPT)));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "my diary",
                "{}",
                "[1, 2]",
                "null",
                "{\"kind\":\"stillturning search\",\"fingerprint\":null,\"candidates\":{}}",
                "{\"kind\":\"another\",\"fingerprint\":\"\",\"candidates\":{}}",
            })
    void aFileOfSomebodyElseIsNotTouched(String content) throws IOException {
        Files.writeString(here.resolve(KEPT), content);
        Ran ran = run("break", "small", "--pairs", "--resume", KEPT);
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains("holds no search of this program"), ran.err());
        assertEquals(content, Files.readString(here.resolve(KEPT)));
    }

    @Test
    void blocksThatCannotBeOfThisCandidateAreRefused() throws IOException {
        String[] words = {"break", "small", "--pairs", "--order", "1", "--resume", KEPT};
        run(words);
        String file = Files.readString(here.resolve(KEPT));
        for (String cuts :
                List.of("[[99999]]", "[[-1]]", "[[0,0]]", "[[null]]", "[null]", "null")) {
            Files.writeString(
                    here.resolve(KEPT),
                    file.replaceFirst("\"cuts\":\\[\\[\\d+\\]\\]", "\"cuts\":" + cuts));
            assertEquals(ExitCode.BAD_INPUT, run(words).code(), cuts);
        }
        Files.writeString(
                here.resolve(KEPT), file.replaceFirst("\\{\"block\":", "null,{\"block\":"));
        assertEquals(ExitCode.BAD_INPUT, run(words).code(), "a block that is none");
    }

    @Test
    void aFolderThatCannotHoldTheFileIsNamedBeforeTheWorkBegins() {
        Ran ran = run("break", "small", "--pairs", "--resume", "nowhere/kept.json");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(ran.err().contains("cannot be written"), ran.err());
    }

    @ParameterizedTest
    @CsvSource({
        "--pairs --order 4, --order 4 is none",
        "--pairs --order 0, --order 0 is none",
        "--order 2, --order needs --pairs",
        "--resume x.json, --resume needs --pairs",
        "--pairs --latent, three questions",
        "--causes --cases, look at all failures",
        "--pairs --failure battery, look at all failures",
        "--pairs --candidate nobody, there is no candidate",
    })
    void whatCannotBeAskedIsSaid(String options, String said) {
        Ran ran =
                run(
                        Stream.concat(
                                        Stream.of("break", "small"),
                                        Stream.of(options.split(" ", -1)))
                                .toArray(String[]::new));
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains(said), ran.err());
    }

    @Test
    void aCandidateWhoseEngineNeverRunsIsNamedAndTheOthersGoOn() {
        Path candidate = here.resolve("small/one-bus.yaml");
        Session.change(
                candidate,
                "returns:",
                """
                  a-switch: {is: switch, zone: panel}
                  b-switch: {is: switch, zone: panel}
                returns:""");
        Session.change(
                candidate,
                "pump.a:     from main-bus, breaker 10 A",
                "pump.a: from main-bus, breaker 10 A, via a-switch");
        Session.change(
                candidate,
                "pump.b:     from main-bus, breaker 10 A",
                "pump.b: from main-bus, breaker 10 A, via b-switch");
        Session.change(candidate, "{flight: {}}", "{flight: {a-switch: off, b-switch: off}}");
        Ran ran = run("break", "small", "--pairs", "--order", "1");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("one-bus could not be computed"), ran.out());
    }

    @Test
    void twoFailuresAtOnceAreOneStory() {
        Ran ran =
                run(
                        "break",
                        "small",
                        "--candidate",
                        "one-bus",
                        "--failure",
                        "alternator no output",
                        "--failure",
                        "battery disconnects itself");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(
                ran.out().contains("alternator: no output + battery: disconnects itself"),
                ran.out());
    }

    @Test
    void theSameFailureTwiceIsNoPair() {
        Ran ran =
                run("break", "small", "--failure", "main bus short", "--failure", "main bus short");
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertTrue(ran.err().contains("each another"), ran.err());
    }

    @Test
    void commonCausesGoByTheirNames() {
        Ran ran = run("break", "small", "--failure", "heat in engine");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("heat in engine"), ran.out());
    }

    @Thorough
    @Test
    void thePageHasWhatWasAskedForAndSaysWhatWasNot() throws Exception {
        run("explain", "small", "--html", "plain.html");
        String plain = Files.readString(here.resolve("plain.html"));
        assertTrue(plain.contains("were not asked for"), plain);
        run("explain", "small", "--pairs", "--html", "pairs.html");
        String page = Files.readString(here.resolve("pairs.html"));
        assertFalse(page.contains("were not asked for"));
        for (String section : List.of("pairs", "causes", "latent", "run-up")) {
            assertTrue(page.contains("<section id=\"" + section + "\">"), section);
            assertTrue(page.contains("href=\"#" + section + "\""), section);
        }
        String body = page.substring(page.indexOf("<html"));
        DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(body)));
    }

    @Test
    void withoutBreakersSwitchesAndProceduresThereIsStillACard() throws IOException {
        for (String file : List.of("one-bus.yaml", "bus-and-battery.yaml")) {
            Path candidate = here.resolve("small").resolve(file);
            List<String> lines = Files.readAllLines(candidate);
            Files.write(
                    candidate,
                    lines.stream()
                            .filter(line -> !line.startsWith("procedures:"))
                            .map(line -> line.replace("breaker", "fuse"))
                            .toList());
        }
        Ran ran = run("run-up", "small");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("No check reveals any."), ran.out());
        assertTrue(ran.out().contains("No lever to set."), ran.out());
    }
}

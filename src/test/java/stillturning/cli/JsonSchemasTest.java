package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.cli.breaking.StoriesJson;
import stillturning.cli.check.CheckJson;
import stillturning.report.json.JsonDocument;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/** What {@code --json} prints keeps to the schemas that are published with the program. */
class JsonSchemasTest {

    @TempDir private Path here;

    @Test
    void checksKeepToTheirSchema() {
        assertEquals(List.of(), faults("cli/check", run("check", "first-steps", "--json")));
        assertEquals(
                List.of(),
                faults("cli/check", run("check", "first-steps", "--expanded", "--json")));
    }

    @Test
    void checksOfABrokenStudyKeepToItToo() {
        Session.in(here).copyOfFirstSteps("broken").resolve("study.yaml").toFile().delete();
        assertEquals(List.of(), faults("cli/check", run("check", "broken", "--json")));
    }

    @Test
    void storiesAndEachStoryInThemKeepToTheirSchemas() {
        String stories = run("break", "first-steps", "--failure", "main bus", "--json");
        assertEquals(List.of(), faults("cli/stories", stories));
        JsonNode told = JsonMapper.builder().build().readTree(stories).get("stories");
        // a short and two feed studs, in each of two candidates
        assertEquals(6, told.size());
        for (JsonNode one : told) {
            assertEquals(List.of(), faults("report/story", one.get("story").toString()));
        }
    }

    @Test
    void decisionsExplanationsAndMatricesKeepToTheirs() {
        assertEquals(List.of(), faults("report/decide", run("decide", "first-steps", "--json")));
        assertEquals(List.of(), faults("report/decide", run("explain", "first-steps", "--json")));
        assertEquals(List.of(), faults("report/matrix", run("break", "first-steps", "--json")));
    }

    @Test
    void sizesKeepToTheirs() {
        assertEquals(List.of(), faults("report/sizes", run("size", "first-steps", "--json")));
    }

    @Test
    void casesPhasesAndWhatStandsBesideThemKeepToTheirs() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        String[] one = {"--candidate", "two alternators"};
        Session session = Session.in(here);
        assertEquals(
                List.of(),
                faults(
                        "report/cases",
                        session.run("break", sandpiper, "--cases", "--json", one[0], one[1])
                                .out()));
        assertEquals(
                List.of(),
                faults(
                        "report/phases",
                        session.run(
                                        "break",
                                        sandpiper,
                                        "--failure",
                                        "main bus short",
                                        "--every-phase",
                                        "--json",
                                        one[0],
                                        one[1])
                                .out()));
    }

    @Thorough
    @Test
    void whatIsDecidedOfTheDemoKeepsToItsSchema() {
        String sandpiper = Session.ARCHITECTURES.resolve("sandpiper").toString();
        assertEquals(
                List.of(),
                faults("report/decide", Session.in(here).run("decide", sandpiper, "--json").out()));
    }

    @Test
    void whatDoesWorseElsewhereKeepsToItsSchema() {
        String worse = run("break", "first-steps", "--every-phase", "--json");
        assertEquals(List.of(), faults("report/elsewhere", worse));
        JsonNode failures = JsonMapper.builder().build().readTree(worse).get("failures");
        assertTrue(!failures.isEmpty(), worse);
        for (JsonNode one : failures) {
            assertNotEquals("", one.get("phase").stringValue());
        }
    }

    @Thorough
    @Test
    void rangesKeepToTheirSchemaInsideTheStoriesThatTheyBelongTo() {
        String stories =
                run(
                        "break",
                        "first-steps",
                        "--failure",
                        "charging lost",
                        "--ranges",
                        "--candidate",
                        "one-bus",
                        "--json");
        assertEquals(List.of(), faults("cli/stories", stories));
        JsonNode all = JsonMapper.builder().build().readTree(stories);
        assertEquals(all.get("stories").size(), all.get("ranges").size());
        for (JsonNode one : all.get("ranges")) {
            assertEquals(List.of(), faults("report/range", one.toString()));
        }
    }

    @Thorough
    @Test
    void whatFailuresDoTogetherKeepsToItsSchemas() {
        String[] kept = {"--resume", here.resolve("kept.json").toString()};
        String pairs = run("break", "first-steps", "--pairs", "--json", kept[0], kept[1]);
        assertEquals(List.of(), faults("report/pairs", pairs));
        String latent = run("break", "first-steps", "--latent", "--json", kept[0], kept[1]);
        assertEquals(List.of(), faults("report/latent", latent));
        String cards = run("run-up", "first-steps", "--json", kept[0], kept[1]);
        assertEquals(List.of(), faults("report/run-up", cards));
        JsonNode one = JsonMapper.builder().build().readTree(pairs).get("candidates").get(0);
        assertTrue(!one.get("sets").isEmpty(), pairs);
    }

    @Test
    void plansOfTheGroundTestKeepToTheirs() {
        String plans = run("ground-test", "first-steps", "--json");
        assertEquals(List.of(), faults("report/ground-test", plans));
        JsonNode one = JsonMapper.builder().build().readTree(plans).get("plans").get(0);
        assertTrue(!one.get("stages").isEmpty() && !one.get("notShown").isEmpty(), plans);
    }

    /** A third of the capacity, as {@code SinceTest} has it told in words. */
    @Thorough
    @Test
    void whatChangedKeepsToItsSchema() {
        Path now = Session.in(here).copyOfFirstSteps("now");
        Path then = Session.in(here).copyOfFirstSteps("then");
        // the same resistance: a short that drives less may be ended by another protector
        String sized = "(guess), resistance: 12 mohm (guess)}";
        for (Path one : List.of(now, then)) {
            Session.change(one.resolve("one-bus.yaml"), "18 Ah (guess)}", "18 Ah " + sized);
        }
        Session.change(now.resolve("one-bus.yaml"), "capacity: 18 Ah", "capacity: 6 Ah");
        String[] page = {"--html", here.resolve("page.html").toString()};
        String changes = run("explain", "now", "--since", "then", page[0], page[1], "--json");
        assertEquals(List.of(), faults("report/since", changes));
        JsonNode read = JsonMapper.builder().build().readTree(changes);
        JsonNode written = read.get("written").get(0);
        assertEquals("18 Ah (guess)", written.get("before").stringValue());
        assertEquals("6 Ah (guess)", written.get("now").stringValue());
        JsonNode smaller = candidate(read, "one-bus");
        assertFalse(smaller.get("requirements").get(0).get("met").booleanValue(), changes);
        assertFalse(smaller.get("outcomes").isEmpty(), changes);
        smaller.get("outcomes").forEach(one -> assertFalse(one.get("better").booleanValue()));
    }

    private static JsonNode candidate(JsonNode document, String id) {
        for (JsonNode one : document.get("candidates")) {
            if (one.get("id").stringValue().equals(id)) {
                return one;
            }
        }
        throw new AssertionError(id);
    }

    @Test
    void whatWasMeasuredKeepsToItsSchema() throws IOException {
        StringBuilder log = new StringBuilder("time (s),volts,amps\n");
        for (int i = 0; i < 100; i++) {
            log.append(30 * i).append(',').append(12.6 - 0.004 * i).append(",6\n");
        }
        Files.writeString(here.resolve("log.csv"), log);
        Path log0 = here.resolve("log.csv");
        String measured =
                run(
                        "record",
                        "first-steps",
                        "--candidate",
                        "one-bus",
                        "--log",
                        log0.toString(),
                        "--json");
        assertEquals(List.of(), faults("report/record", measured));
    }

    @Test
    void whatASearchFoundKeepsToItsSchema() {
        String explored = run("explore", "first-steps", "--layouts", "3", "--json");
        assertEquals(List.of(), faults("report/explored", explored));
    }

    @Test
    void whatWouldMendACandidateKeepsToItsSchema() {
        String found =
                run(
                        "suggest",
                        "first-steps",
                        "--candidate",
                        "one-bus",
                        "--failure",
                        "main bus short",
                        "--moves",
                        "1",
                        "--most",
                        "8",
                        "--json");
        assertEquals(List.of(), faults("report/suggest", found));
        JsonNode all = JsonMapper.builder().build().readTree(found);
        assertTrue(!all.get("suggestions").isEmpty(), found);
    }

    @Test
    void commonCausesAndTheShapeKeepToTheirs() {
        String causes = run("break", "first-steps", "--causes", "--json");
        assertEquals(List.of(), faults("report/causes", causes));
        JsonNode one = JsonMapper.builder().build().readTree(causes).get("candidates").get(0);
        assertTrue(!one.get("causes").isEmpty() && !one.get("functions").isEmpty(), causes);
    }

    @Test
    void newStudiesKeepToTheirs() {
        assertEquals(
                List.of(), faults("cli/new", run("new", "mine", "--batteries", "2", "--json")));
    }

    /** To write them anew after a change of a document, run it with -Dschemas.renew=true. */
    @Test
    void theShippedSchemasAreThoseOfTheDocuments() throws IOException {
        Map<String, JsonDocument<?>> documents =
                Map.of(
                        "check", CheckJson.CHECK,
                        "stories", StoriesJson.STORIES,
                        "new", NewCommand.WRITTEN);
        for (Map.Entry<String, JsonDocument<?>> document : documents.entrySet()) {
            String made = document.getValue().schema();
            String name = document.getKey() + ".schema.json";
            if (Boolean.getBoolean("schemas.renew")) {
                Files.writeString(Path.of("src/main/resources/stillturning/cli", name), made);
            } else {
                assertEquals(made, shipped("/stillturning/cli/" + name));
            }
        }
    }

    private String run(String... words) {
        Session session = Session.in(here);
        if (words[1].equals("first-steps") && !here.resolve("first-steps").toFile().exists()) {
            session.copyOfFirstSteps("first-steps");
        }
        return session.run(words).out();
    }

    private static List<String> faults(String schema, String json) {
        try {
            return SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                    .getSchema(shipped("/stillturning/" + schema + ".schema.json"))
                    .validate(json, InputFormat.JSON)
                    .stream()
                    .map(Object::toString)
                    .toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String shipped(String path) throws IOException {
        try (InputStream in =
                Objects.requireNonNull(JsonSchemasTest.class.getResourceAsStream(path), path)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }
}

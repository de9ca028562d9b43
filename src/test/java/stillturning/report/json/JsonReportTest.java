package stillturning.report.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.Complexity;
import stillturning.assess.Guess;
import stillturning.assess.Guesses;
import stillturning.assess.Guesses.GuessChange;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Turn;
import stillturning.assess.findout.Worth;
import stillturning.assess.ranking.Acceptability;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Chances.Odds;
import stillturning.model.goal.ComplexityWeights;
import stillturning.report.ReportSamples;
import stillturning.report.joint.SameEnding;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class JsonReportTest {

    private static final Assessment ASSESSMENT = ReportSamples.assessment();

    @Test
    void decisionsKeepToTheirSchema() throws Exception {
        assertEquals(List.of(), faults("decide", JsonReport.decide(ASSESSMENT, Optional.empty())));
    }

    @Test
    void triedGuessesKeepToTheSchemaToo() throws Exception {
        Guess guess = new Guess("study.yaml", "loads.pump.draws", "5 A");
        List<GuessChange> every =
                List.of(
                        new GuessChange.Leader("one-bus"),
                        new GuessChange.Requirement("one-bus", "r", true),
                        new GuessChange.Endurance("one-bus", 1800, Double.POSITIVE_INFINITY),
                        new GuessChange.Uncomputed("one-bus", "why"),
                        new GuessChange.Unwell("one-bus"));
        Guesses guesses =
                new Guesses(
                        List.of(
                                new Guesses.Weighty(
                                        guess,
                                        every,
                                        List.of(),
                                        new OpenInterval(4, 5, 6, v -> v + " A"),
                                        new Worth(
                                                0.1,
                                                0.2,
                                                0.001,
                                                0.05,
                                                0.002,
                                                List.of(new Turn(0.5, 0.25, true))))),
                        List.of(guess),
                        List.of(new Guesses.Untried(guess, Optional.of("6 A"))),
                        List.of(new Guesses.GuessedWord(guess, "fast", every)),
                        List.of("left-out"),
                        Optional.of(
                                new Acceptability(
                                        32,
                                        1,
                                        List.of(
                                                new Acceptability.Accepted(
                                                        "one",
                                                        0.7,
                                                        0.1,
                                                        List.of(1.0),
                                                        0.9,
                                                        0.05,
                                                        0.95,
                                                        0.04)))));
        String json = JsonReport.decide(ASSESSMENT, Optional.of(guesses));
        assertEquals(List.of(), faults("decide", json));
        JsonNode turn = read(json).get("guesses").get("matter").get(0).get("turns").get(0);
        assertEquals("4.75 A", turn.get("value").asString());
        assertTrue(turn.get("below").asBoolean());
        JsonNode lower = read(json).get("guesses").get("matter").get(0).get("ifLower");
        assertEquals("leader", lower.get(0).get("what").asString());
        assertTrue(lower.get(2).get("toSeconds").isNull());
        assertTrue(read(JsonReport.decide(ASSESSMENT, Optional.empty())).get("guesses").isNull());
    }

    @Test
    void aDecisionWithoutAnyCandidateKeepsToItToo() throws Exception {
        Assessment none =
                new Assessment(
                        ASSESSMENT.study(),
                        List.of(),
                        List.of(new Assessment.Unassessed("one-bus", "why")),
                        Optional.empty());
        assertEquals(List.of(), faults("decide", JsonReport.decide(none, Optional.empty())));
    }

    @Test
    void everyStoryKeepsToItsSchema() throws Exception {
        for (Appraisal appraisal : ASSESSMENT.appraisals()) {
            for (Verdict verdict : appraisal.singles()) {
                assertEquals(
                        List.of(),
                        faults("story", JsonReport.story(verdict)),
                        verdict.failure().name());
            }
        }
    }

    private static String matrix() {
        List<SameEnding> endings =
                ASSESSMENT.appraisals().stream()
                        .flatMap(a -> SameEnding.of(a, Odds.UNKNOWN).stream())
                        .toList();
        assertFalse(endings.isEmpty());
        return JsonReport.matrix(ASSESSMENT, endings);
    }

    @Test
    void matricesKeepToTheirSchema() throws Exception {
        assertEquals(List.of(), faults("matrix", matrix()));
    }

    @Test
    void aSchemaRefusesAFieldThatItDoesNotKnow() throws Exception {
        String extra = matrix().replaceFirst("\\{", "{ \"extra\" : 1,");
        assertEquals(1, faults("matrix", extra).size());
    }

    @Test
    void anEnduranceWithoutLimitIsNullAndSaysSo() {
        Verdict unlimited =
                ASSESSMENT
                        .of("engine-bus")
                        .orElseThrow()
                        .with(Outcome.STOPS_UNTIL_PILOT_ACTS)
                        .get(0);
        JsonNode engine = read(JsonReport.story(unlimited)).get("pilotAsPlanned").get("engine");
        assertTrue(engine.get("enduranceSeconds").isNull());
        assertFalse(engine.get("enduranceLimited").asBoolean());
    }

    @Test
    void countsAndPlacesAreThoseOfTheAssessment() {
        JsonNode decision = read(JsonReport.decide(ASSESSMENT, Optional.empty()));
        JsonNode first = decision.get("candidates").get(0);
        assertEquals(decision.get("leader").asString(), first.get("id").asString());
        Appraisal leader = ASSESSMENT.of(first.get("id").asString()).orElseThrow();
        assertEquals(
                leader.with(Outcome.ENGINE_LOST).size(),
                first.get("singleFailures").get("engine-lost").asInt());
        Complexity complexity = leader.measures().complexity();
        JsonNode burden = first.get("burden");
        complexity
                .counts()
                .forEach(
                        (count, many) ->
                                assertEquals(
                                        many,
                                        burden.get("complexityCounts").get(count.words()).asInt(),
                                        count.words()));
        assertEquals(
                complexity.index(ComplexityWeights.USUAL),
                burden.get("complexityIndex").asDouble(),
                1e-9);
    }

    @Test
    void theSameAssessmentGivesTheSameText() {
        String text = JsonReport.decide(ASSESSMENT, Optional.empty());
        assertEquals(text, JsonReport.decide(ReportSamples.assessment(), Optional.empty()));
        assertFalse(text.contains("\r"));
    }

    private static JsonNode read(String json) {
        return JsonMapper.builder().build().readTree(json);
    }

    private static List<String> faults(String name, String json) throws Exception {
        SchemaRegistry registry =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12, b -> {});
        String resource = "/stillturning/report/" + name + ".schema.json";
        try (InputStream in = JsonReport.class.getResourceAsStream(resource)) {
            assertNotNull(in, resource);
            String schema = new String(in.readAllBytes(), StandardCharsets.UTF_8);
            return registry.getSchema(schema).validate(json, InputFormat.JSON).stream()
                    .map(e -> e.getInstanceLocation() + " " + e.getMessage())
                    .toList();
        }
    }
}

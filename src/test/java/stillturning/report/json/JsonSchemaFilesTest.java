package stillturning.report.json;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.report.change.ChangeJson;
import stillturning.report.explored.FrontJson;
import stillturning.report.record.MeasuredJson;
import stillturning.report.suggest.MendsJson;
import stillturning.report.suggest.SuggestJson;

/**
 * The schemas that ship with the program. To write them anew after a change of a document, run it
 * with {@code -Dschemas.renew=true}.
 */
class JsonSchemaFilesTest {

    private static final Path RESOURCES = Path.of("src/main/resources/stillturning/report");

    static Stream<Map.Entry<String, JsonDocument<?>>> documents() {
        return Stream.of(
                Map.entry("between", BetweenJson.BETWEEN),
                Map.entry("suggest", SuggestJson.SUGGESTIONS),
                Map.entry("mends", MendsJson.MENDS),
                Map.entry("decide", DecideJson.DECISION),
                Map.entry("explored", FrontJson.EXPLORED),
                Map.entry("story", StoryJson.STORY),
                Map.entry("range", RangeJson.RANGE),
                Map.entry("cases", CasesJson.CASES),
                Map.entry("phases", MomentsJson.PHASES),
                Map.entry("elsewhere", MomentsJson.ELSEWHERE),
                Map.entry("matrix", MatrixJson.MATRIX),
                Map.entry("sizes", SizesJson.SIZES),
                Map.entry("pairs", PairsJson.PAIRS),
                Map.entry("latent", RunUpJson.LATENT),
                Map.entry("run-up", RunUpJson.RUN_UP),
                Map.entry("record", MeasuredJson.AS_BUILT),
                Map.entry("ground-test", GroundTestJson.GROUND_TESTS),
                Map.entry("since", ChangeJson.CHANGES),
                Map.entry("causes", CausesJson.CAUSES));
    }

    @ParameterizedTest
    @MethodSource("documents")
    void theShippedSchemaIsThatOfTheDocument(Map.Entry<String, JsonDocument<?>> document)
            throws IOException {
        String name = document.getKey() + ".schema.json";
        String made = document.getValue().schema();
        if (Boolean.getBoolean("schemas.renew")) {
            Files.writeString(RESOURCES.resolve(name), made);
            return;
        }
        try (InputStream in =
                requireNonNull(
                        JsonReport.class.getResourceAsStream("/stillturning/report/" + name))) {
            assertEquals(made, new String(in.readAllBytes(), StandardCharsets.UTF_8));
        }
    }

    @Test
    void twoShapesOfOneNameAreRefused() {
        JsonShape<String> one =
                JsonShape.<String>named("part").field("id", JsonTypes.TEXT, id -> id);
        JsonShape<String> other =
                JsonShape.<String>named("part").field("length", JsonTypes.WHOLE, String::length);
        JsonShape<String> both =
                JsonDocument.<String>start()
                        .field("one", one, s -> s)
                        .field("other", other, s -> s);
        JsonDocument<String> document = new JsonDocument<>("Both", "", both);
        assertThrows(IllegalArgumentException.class, document::schema);
    }

    @Test
    void aFieldHasItsValueAndItsSchemaFromOneDeclaration() {
        JsonDocument<String> document =
                new JsonDocument<>(
                        "A word",
                        "",
                        JsonDocument.<String>versioned()
                                .field("letters", JsonTypes.WHOLE, String::length)
                                .says("How many."));
        assertEquals("{\n  \"schemaVersion\" : 2,\n  \"letters\" : 3\n}\n", document.text("bus"));
        assertEquals(
                """
                {
                  "$schema": "https://json-schema.org/draft/2020-12/schema",
                  "title": "A word",
                  "type": "object",
                  "additionalProperties": false,
                  "properties": {
                    "schemaVersion": {
                      "type": "integer",
                      "const": 2
                    },
                    "letters": {
                      "type": "integer",
                      "description": "How many."
                    }
                  },
                  "required": [
                    "schemaVersion",
                    "letters"
                  ]
                }
                """,
                document.schema());
    }
}

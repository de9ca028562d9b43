package stillturning.files;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.StudyEntry;
import stillturning.yaml.shape.JsonSchema;

/**
 * The schemas that ship. To write them anew after a change of the entry types, run it with {@code
 * -Dschemas.renew=true}.
 */
class SchemaTest {

    private static final Path RESOURCES = Path.of("src/main/resources/stillturning/files");

    private static void hold(Class<?> type, String name) throws IOException {
        String made = JsonSchema.of(type, FileNotations.binder());
        if (Boolean.getBoolean("schemas.renew")) {
            Files.writeString(RESOURCES.resolve(name + ".schema.json"), made);
        } else {
            assertEquals(made, shipped(name));
        }
    }

    private static String shipped(String name) throws IOException {
        String resource = name + ".schema.json";
        try (InputStream in =
                requireNonNull(StudyReader.class.getResourceAsStream(resource), resource)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        }
    }

    private static List<String> refusals(String schema, String yaml) throws IOException {
        Schema compiled =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(shipped(schema), InputFormat.JSON);
        return compiled.validate(yaml, InputFormat.YAML).stream().map(Object::toString).toList();
    }

    @Test
    void theShippedSchemasAreThoseOfTheTypes() throws IOException {
        hold(StudyEntry.class, "study");
        hold(CandidateEntry.class, "candidate");
    }

    @Test
    void whatCanBeReadTheSchemasAllow() throws IOException {
        assertEquals(List.of(), refusals("study", SampleStudy.STUDY));
        assertEquals(List.of(), refusals("candidate", SampleStudy.ONE));
        for (Starter.StarterAnswers answers : Starter.startingPoints().values()) {
            for (var file : Starter.files(answers).entrySet()) {
                String schema = file.getKey().equals("study.yaml") ? "study" : "candidate";
                assertEquals(List.of(), refusals(schema, file.getValue()), file.getKey());
            }
        }
    }

    @Test
    void misspeltKeysAndMissingUnitsTheSchemasRefuse() throws IOException {
        assertNotEquals(
                List.of(),
                refusals("candidate", SampleStudy.ONE.replace("candidate:", "candidat:")));
        assertNotEquals(List.of(), refusals("candidate", SampleStudy.ONE.replace("40 A}", "40}")));
        assertNotEquals(List.of(), refusals("study", SampleStudy.STUDY.replace("14 V", "14")));
        assertNotEquals(
                List.of(), refusals("study", SampleStudy.STUDY.replace("side: hot", "side: hto")));
    }
}

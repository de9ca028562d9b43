package stillturning.yaml.shape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.field.Default;
import stillturning.quantity.field.OfDimension;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.edit.EditRefused;
import stillturning.yaml.edit.YamlEdit;

class JsonSchemaTest {

    private static final String TEXT = JsonSchema.of(Sample.Drawing.class, Sample.BINDER);

    // an independent validator reads the same YAML by its own reader
    private static final Schema SCHEMA =
            SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(TEXT);

    private static List<Error> errors(String yaml) {
        return SCHEMA.validate(yaml, InputFormat.YAML);
    }

    @Test
    void theSchemaIsItselfValidAndTheSameEveryTime() {
        Schema meta =
                SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(
                                SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
        assertEquals(List.of(), meta.validate(TEXT, InputFormat.JSON));
        assertEquals(TEXT, JsonSchema.of(Sample.Drawing.class, Sample.BINDER));
        assertTrue(TEXT.contains("\"description\": \"Charge when new.\""), TEXT);
        assertTrue(TEXT.contains("\"default\": \"100 %\""), TEXT);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "", // the sample as it is
                "title: 5",
                "title: true",
                "title: on",
                "flown: yes",
                "flown: true",
                "weighting: 1.5",
                "weighting: 0",
                "parts: {}",
                "parts: {a.b: {is: wire, gauge: 4 mm², length: 0.9m}}",
                "parts: {a: {is: wire, gauge: 16 AWG, length: 12 in}}",
                "parts: {a: {is: wire, gauge: AWG 2/0 (measured), length: 12 in}}",
                "parts: {a: {is: battery, capacity: 20000 mAh (measured), chemistry: lead-acid, health: 80%}}",
                "parts: {a: {is: battery, capacity: '20 Ah (guessed: by eye)', chemistry: lead-acid}}",
                "parts: {a: {is: alternator, limit: 45 A, regulated at: 14.4 V}}",
                "feeds: [{from: a, breaker: 5 A, then: [{from: b, breaker: 1 A}]}]",
                "remark: 12"
            })
    void whatTheBinderAcceptsTheSchemaAcceptsToo(String line) {
        String text = with(line);
        assertEquals(List.of(), Sample.bind(text).problems());
        assertEquals(List.of(), errors(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "titel: x",
                "title:",
                "title: [a]",
                "title: ''",
                "flown: maybe",
                "flown: on",
                "seats: two",
                "seats: 2.5",
                "seats: 5",
                "seats: '2'",
                "weighting: 3",
                "weighting: heavy",
                "parts: []",
                "parts: {Big One: {is: wire, gauge: AWG 16, length: 1 m}}",
                "parts: {a: {gauge: AWG 16, length: 1 m}}",
                "parts: {a: {is: wire, gauge: AWG 16}}",
                "parts: {a: {is: rope, gauge: AWG 16, length: 1 m}}",
                "parts: {a: {is: wire, gauge: 16, length: 1 m}}",
                "parts: {a: {is: wire, gauge: AWG 5/0, length: 1 m}}",
                "parts: {a: {is: wire, gauge: AWG 16, length: 1 V}}",
                "parts: {a: {is: wire, gauge: AWG 16, length: 1}}",
                "parts: {a: {is: wire, gauge: AWG 16, length: 1 m, chemistry: lead-acid}}",
                "parts: {a: {is: battery, capacity: 20 Ah (rumour), chemistry: lead-acid}}",
                "parts: {a: {is: battery, capacity: 20 Ah (guess, chemistry: lead-acid}}",
                "parts: {a: {is: battery, capacity: 20 Ah, chemistry: LEAD_ACID}}",
                "feeds: {}",
                "feeds: [[a]]",
                "feeds: [{from: a}]",
                "remark:"
            })
    void whatTheBinderRefusesTheSchemaRefusesToo(String line) {
        String text = with(line);
        assertTrue(!Sample.bind(text).problems().isEmpty(), text);
        assertTrue(!errors(text).isEmpty(), text);
    }

    /** The sample document with one line put in, in place of the field of that name. */
    private static String with(String line) {
        if (line.isEmpty()) {
            return Sample.TEXT;
        }
        String key = line.substring(0, line.indexOf(':'));
        try {
            YamlDocument document = Sample.document(Sample.TEXT);
            boolean there = document.places().value(key).isPresent();
            String rest =
                    there ? new YamlEdit.Remove(key).on(document).document().text() : Sample.TEXT;
            return rest + line + "\n";
        } catch (EditRefused refused) {
            throw new IllegalStateException(refused);
        }
    }

    record NoUnit(Quantity quantity) {}

    record BareDouble(double number) {}

    record BadLimit(@OfDimension(value = Dimension.CURRENT, most = "5 V") Quantity current) {}

    record BadDefault(@Default("maybe") boolean flag) {}

    record BadKey(Map<Integer, String> map) {}

    record Raw(Optional<Object> anything) {}

    @Test
    void aRecordTypeThatCannotBeBoundIsNamed() {
        for (Class<?> type :
                List.of(NoUnit.class, BareDouble.class, BadLimit.class, BadKey.class, Raw.class)) {
            IllegalArgumentException told =
                    assertThrows(
                            IllegalArgumentException.class,
                            () -> JsonSchema.of(type, new Binder()));
            assertTrue(
                    String.valueOf(told.getMessage()).startsWith(type.getSimpleName() + "."),
                    told.getMessage());
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> new Binder().bind(Sample.document("{}"), BadDefault.class));
    }
}

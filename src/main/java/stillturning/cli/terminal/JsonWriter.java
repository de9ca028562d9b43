package stillturning.cli.terminal;

import tools.jackson.core.util.DefaultIndenter;
import tools.jackson.core.util.DefaultPrettyPrinter;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.MapperFeature;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;

/** Records as JSON text, fields in the order in which they are declared. */
public final class JsonWriter {

    private static final DefaultIndenter INDENT = new DefaultIndenter("  ", "\n");

    private JsonWriter() {}

    public static String text(Object shape) {
        return mapper().writeValueAsString(shape) + "\n";
    }

    public static JsonNode tree(String text) {
        return mapper().readTree(text);
    }

    private static JsonMapper mapper() {
        return JsonMapper.builder()
                .disable(MapperFeature.SORT_PROPERTIES_ALPHABETICALLY)
                .enable(SerializationFeature.INDENT_OUTPUT)
                .defaultPrettyPrinter(
                        new DefaultPrettyPrinter()
                                .withObjectIndenter(INDENT)
                                .withArrayIndenter(INDENT))
                .build();
    }
}

package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import tools.jackson.databind.json.JsonMapper;

class SchemaCommandTest {

    private static final Path RESOURCES = Path.of("src", "main", "resources", "stillturning");
    private static final String ENDING = ".schema.json";

    @TempDir private Path here = Path.of("");

    @Test
    void everySchemaThatShipsIsListedAndPrintedAsItShips() throws IOException {
        List<Path> shipped;
        try (Stream<Path> all = Files.walk(RESOURCES)) {
            shipped = all.filter(f -> f.toString().endsWith(ENDING)).toList();
        }
        String listed = Session.in(here).run("schema").out();
        for (Path file : shipped) {
            String name = file.getFileName().toString().replace(ENDING, "");
            Ran ran = Session.in(here).run("schema", name);
            assertEquals(ExitCode.FINE, ran.code(), ran.err());
            assertEquals(Files.readString(file), ran.out());
            assertTrue(JsonMapper.builder().build().readTree(ran.out()).isObject(), name);
            assertTrue(listed.lines().anyMatch(line -> line.startsWith(name + " ")), listed);
        }
        assertEquals(shipped.size(), SchemaCommand.names().size());
    }

    @Test
    void anUnknownNameIsRefusedWithThoseThatAre() {
        Ran ran = Session.in(here).run("schema", "candidates");
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertTrue(
                ran.err().contains("no schema is called \"candidates\"; one of study, candidate"),
                ran.err());
    }
}

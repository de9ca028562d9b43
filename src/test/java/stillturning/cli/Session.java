package stillturning.cli;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import stillturning.cli.terminal.CommandContext;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Somebody who stands in a folder and runs commands.
 *
 * @param terminal whether he sits at a terminal
 * @param colour whether it shows colours
 */
public record Session(Path here, boolean terminal, boolean colour) {

    /** The demo studies of the project. */
    public static final Path ARCHITECTURES = Path.of("architectures").toAbsolutePath();

    /** What a command left behind. */
    public record Ran(int code, String out, String err) {
        public List<String> lines() {
            return out.lines().toList();
        }
    }

    /** Without a terminal, as in a script. */
    public static Session in(Path here) {
        return new Session(here, false, false);
    }

    public Ran run(String... words) {
        return answering("", words);
    }

    public Ran answering(String typed, String... words) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        CommandContext context =
                new CommandContext(
                        new PrintWriter(out),
                        new PrintWriter(err),
                        new BufferedReader(new StringReader(typed)),
                        terminal,
                        colour,
                        here);
        int code = Main.run(context, words);
        return new Ran(code, out.toString(), err.toString());
    }

    /** A copy of the small demo study under this name, to be changed by a test. */
    public Path copyOfFirstSteps(String name) {
        try (Stream<Path> files = Files.list(ARCHITECTURES.resolve("first-steps"))) {
            Path folder = Files.createDirectories(here.resolve(name));
            for (Path file : files.sorted().toList()) {
                Files.copy(file, folder.resolve(file.getFileName()));
            }
            return folder;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What stands in a file. */
    public static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Changes a text that stands in a file. */
    public static void change(Path file, String from, String to) {
        try {
            String text = text(file);
            if (!text.contains(from)) {
                throw new AssertionError(file + " does not say " + from);
            }
            Files.writeString(file, text.replace(from, to));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** What a command printed for other programs. */
    public static JsonNode tree(String json) {
        return JsonMapper.builder().build().readTree(json);
    }
}

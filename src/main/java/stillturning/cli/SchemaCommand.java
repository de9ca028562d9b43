package stillturning.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Refusal;

/** Prints the JSON Schema of a file that people write, or of a result. */
@Command(
        name = "schema",
        description =
                "Print the JSON Schema of a file that you write (study, candidate) or of a result"
                        + " that --json prints. An editor that knows it completes words and says"
                        + " what does not belong.",
        footer = {"  stillturning schema", "  stillturning schema candidate"})
final class SchemaCommand implements Callable<Integer> {

    /** Every schema, by name: the room that it lies in, and what has this form. */
    private static final Map<String, Schema> ALL =
            named(
                    new Schema("study", "files", "what all candidates share: study.yaml"),
                    new Schema("candidate", "files", "one candidate: every other file of a study"),
                    new Schema("new", "cli", "new"),
                    new Schema("check", "cli", "check"),
                    new Schema("decide", "report", "decide"),
                    new Schema("between", "report", "decide --between"),
                    new Schema("explored", "report", "explore"),
                    new Schema("matrix", "report", "break"),
                    new Schema("story", "report", "break --failure, of one candidate"),
                    new Schema("stories", "cli", "break --failure, of several candidates"),
                    new Schema("range", "report", "break --failure --ranges"),
                    new Schema("phases", "report", "break --failure --every-phase"),
                    new Schema("elsewhere", "report", "break --every-phase"),
                    new Schema("cases", "report", "break --cases"),
                    new Schema("causes", "report", "break --causes"),
                    new Schema("pairs", "report", "break --pairs"),
                    new Schema("latent", "report", "break --latent"),
                    new Schema("run-up", "report", "run-up"),
                    new Schema("ground-test", "report", "ground-test"),
                    new Schema("since", "report", "explain --since"),
                    new Schema("suggest", "report", "suggest"),
                    new Schema("mends", "report", "suggest --lightest"),
                    new Schema("sizes", "report", "size"),
                    new Schema("record", "report", "record"));

    private final CommandContext context;

    @Parameters(
            arity = "0..1",
            paramLabel = "NAME",
            description = "Which one; without it all are listed.")
    private Optional<String> name = Optional.empty();

    SchemaCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (name.isEmpty()) {
            list();
            return ExitCode.FINE;
        }
        Schema asked = ALL.get(name.get().toLowerCase(Locale.ROOT));
        if (asked == null) {
            throw new Refusal(
                    "no schema is called \""
                            + name.get()
                            + "\"; one of "
                            + String.join(", ", ALL.keySet()));
        }
        context.out().print(asked.text());
        return ExitCode.FINE;
    }

    /** The names of all schemas, in the order in which they are listed. */
    static List<String> names() {
        return List.copyOf(ALL.keySet());
    }

    private void list() {
        ALL.values()
                .forEach(
                        each ->
                                context.out()
                                        .printf(
                                                Locale.ROOT,
                                                "%-10s %s%n",
                                                each.name,
                                                each.words()));
        context.out().println();
        context.out().println("'stillturning schema NAME' prints one of them.");
    }

    private static Map<String, Schema> named(Schema... all) {
        Map<String, Schema> byName = new LinkedHashMap<>();
        for (Schema each : all) {
            byName.put(each.name, each);
        }
        return byName;
    }

    private record Schema(String name, String room, String of) {

        String words() {
            return room.equals("files") ? of : "result of " + of;
        }

        String text() {
            String resource = "/stillturning/" + room + "/" + name + ".schema.json";
            try (InputStream in = SchemaCommand.class.getResourceAsStream(resource)) {
                return new String(
                        Objects.requireNonNull(in, resource).readAllBytes(),
                        StandardCharsets.UTF_8);
            } catch (IOException e) {
                throw new UncheckedIOException(resource, e);
            }
        }
    }
}

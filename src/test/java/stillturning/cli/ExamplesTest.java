package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import picocli.CommandLine.Model.CommandSpec;

/** What the help of each command shows as an example. */
class ExamplesTest {

    private static final Pattern NAMED =
            Pattern.compile(" sandpiper .*--(?:candidate ([a-z0-9-]+)|between (\\S+) (\\S+))");

    private static Stream<CommandSpec> all(CommandSpec of) {
        return Stream.concat(
                Stream.of(of),
                of.subcommands().values().stream().flatMap(sub -> all(sub.getCommandSpec())));
    }

    @Test
    void everyExampleNamesCandidatesThatAreThere() {
        List<String> unknown = new ArrayList<>();
        List<String> asked = new ArrayList<>();
        all(Main.definition())
                .flatMap(command -> Arrays.stream(command.usageMessage().footer()))
                .forEach(
                        line -> {
                            Matcher named = NAMED.matcher(line);
                            if (named.find()) {
                                asked.add(line);
                                for (int i = 1; i <= named.groupCount(); i++) {
                                    String id = named.group(i);
                                    if (id != null && !isThere(id)) {
                                        unknown.add(line);
                                    }
                                }
                            }
                        });

        assertTrue(asked.size() > 10, asked.toString());
        assertEquals(List.of(), unknown);
    }

    private static boolean isThere(String id) {
        return Files.exists(Path.of("architectures/sandpiper", id + ".yaml"));
    }
}

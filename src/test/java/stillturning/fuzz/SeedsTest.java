package stillturning.fuzz;

import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.cli.explore.KeptTrialsFuzz;
import stillturning.files.CandidateFuzz;
import stillturning.files.StudyFuzz;
import stillturning.files.edit.EditFuzz;
import stillturning.files.record.FormFuzz;
import stillturning.files.record.LogFuzz;
import stillturning.yaml.TextFuzz;

/**
 * Every door with every seed, whole and broken off; what spoiling by lot has found stays among
 * them. Hours of it: {@code mvn -Pfuzz test -Dfuzzed=files.StudyFuzz -Dseconds=3600}.
 */
class SeedsTest {

    private static final Path SEEDS = Path.of("src/test/resources/stillturning/fuzz");

    private static final Map<String, Consumer<byte[]>> DOORS =
            Map.of(
                    "yaml.TextFuzz", TextFuzz::fuzzerTestOneInput,
                    "files.StudyFuzz", StudyFuzz::fuzzerTestOneInput,
                    "files.CandidateFuzz", CandidateFuzz::fuzzerTestOneInput,
                    "files.record.LogFuzz", LogFuzz::fuzzerTestOneInput,
                    "files.record.FormFuzz", FormFuzz::fuzzerTestOneInput,
                    "files.edit.EditFuzz", EditFuzz::fuzzerTestOneInput,
                    "cli.explore.KeptTrialsFuzz", KeptTrialsFuzz::fuzzerTestOneInput);

    static Stream<String> doors() {
        return DOORS.keySet().stream().sorted();
    }

    @ParameterizedTest
    @MethodSource("doors")
    void promisesAreKept(String door) throws IOException {
        Consumer<byte[]> taking = Objects.requireNonNull(DOORS.get(door));
        try (Stream<Path> files = Files.list(SEEDS.resolve(door))) {
            List<Path> all = files.sorted().toList();
            assertFalse(all.isEmpty(), door);
            for (Path seed : all) {
                byte[] input = Files.readAllBytes(seed);
                taking.accept(input);
                for (int cut = 1; cut < 8; cut++) {
                    taking.accept(Arrays.copyOf(input, input.length * cut / 8));
                }
            }
        }
    }
}

package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Effort;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.sizing.Sizing;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/** What the program chooses, its own judge does not find wrong. */
class AutomaticGaugesTest {

    private static final Path FOLDER =
            Path.of("src", "test", "resources", "stillturning", "cases", "automatic-gauges");

    /** What another gauge would mend. */
    private static final Set<Rule> OF_GAUGES =
            EnumSet.of(Rule.AMPACITY, Rule.CHART, Rule.HEAT, Rule.DROP, Rule.MAIN_POWER);

    private static final int STUDIES = Effort.cases(6, 25);

    @TempDir Path folder;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "as it is | |",
                "high up | altitude: 2500 m | altitude: 12000 m",
                "a full bundle | bundle: 12, loaded: 40 % | bundle: 33, loaded: 100 %",
                "alone | bundle: 12 | bundle: 1",
                "hot | temperature: 60 degC | temperature: 120 degC",
                "thin insulation | insulation: 150 degC | insulation: 105 degC",
                "long returns | across: 0.5 m (guess), temperature: 60 | across: 5 m (guess),"
                        + " temperature: 60",
                "now and then | draws: 18 A (guess), | draws: 18 A (guess), duty: 10 %,",
            })
    void aStudyWithoutGaugesHasNoFindingAboutThem(String how, String written, String instead)
            throws IOException, UntoldStory {
        String study = Files.readString(FOLDER.resolve("study.yaml"));
        String changed = written == null ? study : study.replace(written, instead);
        assertTrue(written == null || !changed.equals(study), how);
        assertEquals(List.of(), found(changed, Files.readString(FOLDER.resolve("one.yaml"))), how);
    }

    /** A switch between two runs, a protector behind the wire, and a feed that nothing protects. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from main-bus, breaker 30 A, wire 6 m (measured) |"
                        + " from main-bus, wire 6 m (measured), breaker 30 A, wire 0.4 m",
                "from main-bus, breaker 10 A, wire 3 m (measured) |"
                        + " from main-bus, wire 3 m (measured)",
                "from main-bus, breaker 10 A, wire 3 m (measured) |"
                        + " from main-bus, breaker 10 A, fuse 15 A, wire 3 m (measured)",
            })
    void neitherHaveItsRelatives(String written, String instead) throws IOException, UntoldStory {
        String one = Files.readString(FOLDER.resolve("one.yaml"));
        assertTrue(one.contains(written));
        assertEquals(
                List.of(),
                found(
                        Files.readString(FOLDER.resolve("study.yaml")),
                        one.replace(written, instead)));
    }

    /** Twice the voltage allows twice the drop (AC 43.13-1B table 11-6), and so thinner wires. */
    @ParameterizedTest
    @ValueSource(strings = {"altitude: 2500 m", "altitude: 12000 m"})
    void neitherHasAnyAtTwiceTheVoltage(String altitude) throws IOException, UntoldStory {
        String study =
                Files.readString(FOLDER.resolve("study.yaml"))
                        .replace("nominal: 14 V", "nominal: 28 V")
                        .replace("altitude: 2500 m", altitude);
        String fourteen = Files.readString(FOLDER.resolve("one.yaml"));
        String one =
                fourteen.replace("class: agm, zone", "class: agm, nominal: 24 V, zone")
                        .replace(
                                "class: automotive, zone",
                                "class: automotive, set-point: 28.4 V (guess), dump-clamp: 70 V"
                                        + " (guess), field-resistance: 16 ohm (guess), zone");
        assertEquals(List.of(), found(study, one));
        double thin = wireMass(study, one);
        assertTrue(
                thin < wireMass(Files.readString(FOLDER.resolve("study.yaml")), fourteen),
                "wires are no lighter: " + thin + " kg");
    }

    private double wireMass(String study, String one) throws IOException {
        Files.writeString(folder.resolve("study.yaml"), study);
        Files.writeString(folder.resolve("one.yaml"), one);
        return StudyReader.read(folder)
                .study()
                .orElseThrow()
                .candidates()
                .get(0)
                .wires()
                .mapToDouble(wire -> wire.metres() * wire.cable().kilogramsPerMetre())
                .sum();
    }

    @Test
    void neitherHasAnyOfManyRandomStudies() throws IOException, UntoldStory {
        SplittableRandom random = new SplittableRandom(17);
        for (int i = 0; i < STUDIES; i++) {
            String study = Files.readString(FOLDER.resolve("study.yaml"));
            String one = Files.readString(FOLDER.resolve("one.yaml"));
            study = drawn(study, random, "altitude: ", " m (guess), insu", 0, 15_000);
            study = drawn(study, random, "temperature: ", " degC (guess)}\n  engine", -20, 60);
            study = drawn(study, random, "engine, length: ", " m (guess)}", 0.2, 5);
            study = drawn(study, random, "loaded: ", " %", 5, 100);
            for (String load : List.of("beacon", "coils", "pump", "fan", "winch")) {
                one = drawn(one, random, load(one, load), " m (measured)", 0.2, 12);
            }
            assertEquals(List.of(), found(study, one), "study " + i);
        }
    }

    private static String load(String one, String load) {
        int at = one.indexOf("  " + load + ":");
        return one.substring(at, one.indexOf("wire ", at) + "wire ".length());
    }

    /** Puts a number between two texts. */
    private static String drawn(
            String text,
            SplittableRandom random,
            String before,
            String after,
            double low,
            double high) {
        int from = text.indexOf(before) + before.length();
        int to = text.indexOf(after, from);
        double value = low + (high - low) * random.nextDouble();
        return text.substring(0, from)
                + String.format(Locale.ROOT, "%.2f", value)
                + text.substring(to);
    }

    private List<String> found(String study, String one) throws IOException, UntoldStory {
        Files.writeString(folder.resolve("study.yaml"), study);
        Files.writeString(folder.resolve("one.yaml"), one);
        ReadStudy read = StudyReader.read(folder);
        assertEquals(List.of(), read.problems());
        Study made = read.study().orElseThrow();
        SizingReport report =
                Sizing.of(made, made.candidates().get(0), read.sizes().installation());
        return report.findings().stream()
                .filter(f -> OF_GAUGES.contains(f.rule()))
                .map(Object::toString)
                .toList();
    }
}

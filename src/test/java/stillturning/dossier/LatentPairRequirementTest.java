package stillturning.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.bench.Thorough;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;

/** No pair of which one is latent, on the smallest study. */
class LatentPairRequirementTest {

    private static final Path SAMPLE = Path.of("architectures", "first-steps");

    private static ReadStudy read(Path into, String unseen) throws IOException {
        for (String file : new String[] {"study.yaml", "one-bus.yaml", "bus-and-battery.yaml"}) {
            Files.writeString(
                    into.resolve(file),
                    Files.readString(SAMPLE.resolve(file))
                            .replace(
                                    "requirements: {endurance-without-charging: 30 min}",
                                    "requirements: {no-latent-pair: " + unseen + "}"));
        }
        return StudyReader.read(into);
    }

    private static RequirementMet met(Path folder, String unseen) throws IOException {
        ReadStudy read = read(folder, unseen);
        Study study = read.study().orElseThrow(() -> new AssertionError(read.problems()));
        Assessment assessment =
                Assess.of(
                        study,
                        new RequirementSurvey(study, read.sizes().installation()),
                        done -> {});
        return assessment.of("bus-and-battery").orElseThrow().met().get(0);
    }

    // By the layout's own text: each b input has a fuse that nobody misses while a is there.
    @Thorough
    @Test
    void theSecondFeedsFuseIsOneAndTheBreakerThatShowsItIsNamed(@TempDir Path folder)
            throws IOException {
        RequirementMet flight = met(folder, "in-flight");
        assertFalse(flight.met());
        assertEquals(
                "no failure unseen in flight ends the engine with one more", flight.requirement());
        assertTrue(flight.reason().contains(" pairs do, with "), flight::reason);
        assertTrue(flight.margin().endsWith(" too many"), flight::margin);

        RequirementMet runUp = met(folder, "in-flight-and-run-up");
        assertTrue(pairs(runUp) < pairs(flight), runUp::reason);
    }

    private static int pairs(RequirementMet met) {
        return met.met() ? 0 : Integer.parseInt(met.margin().split(" ", 2)[0]);
    }

    @Test
    void anotherWordIsRefusedWithThoseThatAreKnown(@TempDir Path folder) throws IOException {
        String told = read(folder, "never").problems().toString();
        assertTrue(told.contains("in-flight-and-run-up"), told);
    }
}

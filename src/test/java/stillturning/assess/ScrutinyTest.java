package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Scrutiny.MissedRequirement;
import stillturning.assess.requirement.Survey;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.goal.CriterionName;
import stillturning.yaml.YamlDocument;

/** Looking only as far as needed comes to what looking at everything comes to. */
class ScrutinyTest {

    private static final Path FOLDER = Path.of("architectures/first-steps");
    private static final StudyReader READER = StudyReader.open(FOLDER);
    private static final String SET = "requirements: {endurance-without-charging: 30 min}";

    private static Study asking(String requirements) throws IOException {
        Path file = FOLDER.resolve("study.yaml");
        String text = Files.readString(file);
        assertTrue(text.contains(SET));
        return READER.with(
                        YamlDocument.of(
                                file, text.replace(SET, "requirements: {" + requirements + "}")))
                .study(Variation.NONE)
                .study()
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "endurance-without-charging: 9 h, no-single-failure-stops-engine: yes",
                "interruption-below: 500 ms, weight-at-most: 100 kg",
                "weight-at-most: 9 kg, interruption-below: 500 ms",
                "restarts-in-flight: yes"
            })
    void whatIsRefusedMissesARequirementAndNothingElseDoes(String requirements) throws Exception {
        Study study = asking(requirements);
        for (Candidate candidate : study.candidates()) {
            Appraisal whole = Scrutiny.of(study, candidate, Survey.NONE).appraisal();
            List<String> missed =
                    whole.met().stream()
                            .filter(met -> !met.met())
                            .map(RequirementMet::requirement)
                            .toList();
            Set<String> all =
                    whole.singles().stream()
                            .map(v -> v.failure().name())
                            .collect(Collectors.toSet());
            for (Set<String> first : List.of(Set.<String>of(), Set.of("main-bus short"))) {
                Scrutiny look = Scrutiny.of(study, candidate, Survey.NONE);
                Optional<MissedRequirement> refusal = look.refusal(first);
                assertEquals(missed.isEmpty(), refusal.isEmpty(), candidate.id());
                refusal.ifPresent(
                        r -> {
                            assertTrue(missed.contains(r.requirement()), r.requirement());
                            assertTrue(all.containsAll(r.breaking()));
                        });
            }
        }
    }

    @Test
    void nothingIsBetterThanAtBestAndWhatOneStoryTellsIsExact() throws Exception {
        Study study = asking("endurance-without-charging: 30 min");
        for (Candidate candidate : study.candidates()) {
            Scrutiny look = Scrutiny.of(study, candidate, Survey.NONE);
            var best = look.atBest();
            var values = look.appraisal().measures().values();
            for (CriterionName criterion : CriterionName.values()) {
                double most = best.getOrDefault(criterion, Double.NaN);
                double found = values.getOrDefault(criterion, Double.NaN);
                switch (criterion) {
                    case ENGINE_STOPS, PILOT_NEEDED -> assertTrue(most <= found);
                    case ENDURANCE, WEIGHT, COMPLEXITY, COST -> assertEquals(found, most);
                }
            }
        }
    }
}

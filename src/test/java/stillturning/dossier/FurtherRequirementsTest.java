package stillturning.dossier;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.yaml.Problem;

/** Requirements that people have beside the engine's, on the smallest study. */
class FurtherRequirementsTest {

    private static final Path SAMPLE = Path.of("architectures", "first-steps");
    private static final String PLAIN = "requirements: {endurance-without-charging: 30 min}";
    private static final String ASKED =
            "requirements: {endurance-without-charging: 30 min, never-dark: [radio, computer],"
                    + " acts-at-most: 1, cost-at-most: 300, departures-at-most: 1,"
                    + " no-size-limit-broken: yes, arm: {least: 0.5 m, most: 2 m}}";

    @TempDir static Path folder;

    private static Assessment assessment;
    private static ReadStudy read;

    private static ReadStudy read(Path into, String requirements) throws IOException {
        for (String file : new String[] {"study.yaml", "one-bus.yaml", "bus-and-battery.yaml"}) {
            String text = Files.readString(SAMPLE.resolve(file));
            Files.writeString(
                    into.resolve(file),
                    text.replace(PLAIN, requirements)
                            .replace("panel:  {across", "panel:  {arm: 1.4 m, across")
                            .replace("engine: {side", "engine: {arm: 0.4 m, side"));
        }
        return StudyReader.read(into);
    }

    @BeforeAll
    static void assessIt() throws IOException {
        read = read(folder, ASKED);
        Study study = read.study().orElseThrow(() -> new AssertionError(read.problems()));
        assessment =
                Assess.of(
                        study,
                        new RequirementSurvey(study, read.sizes().installation()),
                        done -> {});
    }

    private static RequirementMet met(String candidate, String words) {
        return assessment.of(candidate).orElseThrow().met().stream()
                .filter(m -> m.requirement().contains(words))
                .findFirst()
                .orElseThrow();
    }

    // The radio hangs on one bus by one breaker and one wire: by the layout's own text.
    @Test
    void aLoadWithOneFeedIsDarkenedByItsBreakerButNotChargedWithItsOwnFailures() {
        RequirementMet radio = met("bus-and-battery", "darkens the radio");
        assertFalse(radio.met());
        assertTrue(
                radio.culprits().contains("radio-breaker: opens for no reason"), radio::toString);
        assertTrue(
                radio.culprits().stream().noneMatch(name -> name.startsWith("radio:")),
                radio::toString);
    }

    @Test
    void aLoadWithTwoFeedsLosesNothingToABreakerOfOne() {
        RequirementMet computer = met("bus-and-battery", "darkens the computer");
        assertTrue(
                computer.culprits().stream()
                        .noneMatch(name -> name.startsWith("computer-a-breaker")),
                computer::toString);
    }

    @Test
    void actsAreThoseOfTheLongestProcedure() {
        RequirementMet acts = met("one-bus", "of the pilot");
        assertTrue(acts.met());
        assertEquals("the longest asks for 1", acts.reason());
        assertEquals("0 of them to spare", acts.margin());
    }

    @Test
    void departuresAreCountedAgainstTheBaselineWithoutWires() {
        assertEquals("0 are", met("one-bus", "other than in the baseline").reason());
        RequirementMet other = met("bus-and-battery", "other than in the baseline");
        // each of two breakers has become a fuse of another name
        assertFalse(other.met());
        assertTrue(other.reason().startsWith("4 are ("), other::toString);
        assertEquals("3 of them too much", other.margin());
    }

    @Test
    void costHasAMargin() {
        for (String candidate : new String[] {"one-bus", "bus-and-battery"}) {
            RequirementMet cost = met(candidate, "costs at most 300 EUR");
            double price = assessment.of(candidate).orElseThrow().measures().burdens().price();
            assertEquals(price <= 300, cost.met());
            assertTrue(
                    cost.margin().endsWith(price <= 300 ? "EUR to spare" : "EUR too much"),
                    cost::toString);
        }
    }

    @Test
    void sizesAndArmsAreLookedAtByTheRoomThatKnowsThem() {
        RequirementMet sizes = met("one-bus", "limit of a size");
        assertFalse(sizes.reason().contains("not looked at"), sizes::toString);
        RequirementMet arm = met("one-bus", "balance between");
        assertTrue(arm.met(), arm::toString);
        assertTrue(arm.reason().startsWith("they balance at "), arm::toString);
        assertTrue(arm.margin().endsWith("m to spare"), arm::toString);
    }

    @Test
    void whereNobodyLooksItCountsAsMissedAndSaysSo() {
        Assessment blind = Assess.of(assessment.study());
        RequirementMet sizes =
                blind.appraisals().get(0).met().stream()
                        .filter(m -> m.requirement().contains("limit of a size"))
                        .findFirst()
                        .orElseThrow();
        assertFalse(sizes.met());
        assertEquals("not looked at, so it counts as missed", sizes.reason());
    }

    @Test
    void mistakesAreToldWithTheirPlaces(@TempDir Path other) throws IOException {
        String told =
                read(
                                other,
                                "requirements: {never-dark: [radoi, radio, radio],"
                                        + " arm: {least: 2 m, most: 1 m}}")
                        .problems()
                        .stream()
                        .map(Problem::toString)
                        .collect(Collectors.joining("\n"));
        assertTrue(told.contains("requirements.never-dark[0]"), told);
        assertTrue(told.contains("there is no load \"radoi\""), told);
        assertTrue(told.contains("\"radio\" is already there"), told);
        assertTrue(told.contains("requirements.arm.most"), told);
    }
}

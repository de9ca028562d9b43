package stillturning.files.goal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.SampleStudy;
import stillturning.model.Study;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;
import stillturning.model.goal.CriterionName;
import stillturning.model.goal.UsualScales;
import stillturning.model.goal.ValueScale;

class PreferencesReaderTest {

    @TempDir Path folder;

    private Study study(String more) throws IOException {
        return SampleStudy.read(folder, SampleStudy.STUDY + more, SampleStudy.ONE)
                .study()
                .orElseThrow();
    }

    private String told(String more) throws IOException {
        return SampleStudy.told(
                SampleStudy.read(folder, SampleStudy.STUDY + more, SampleStudy.ONE));
    }

    @Test
    void aStatedScaleIsReadInTheUnitsInside() throws IOException {
        Study study =
                study(
                        """
                        criteria:
                          endurance: {acceptable: 30 min, halfway: 45 min, enough: 2 h}
                          weight: {acceptable: 20 kg, enough: 12 kg}
                          cost: {acceptable: 4000, enough: 1500}
                        """);
        ValueScale endurance = UsualScales.of(study, CriterionName.ENDURANCE);
        assertEquals(1800, endurance.acceptable());
        assertEquals(Optional.of(2700.0), endurance.halfway());
        assertEquals(7200, endurance.enough());
        assertTrue(endurance.stated());
        assertEquals(16, UsualScales.of(study, CriterionName.WEIGHT).middle());
        assertEquals(1500, UsualScales.of(study, CriterionName.COST).enough());
    }

    @Test
    void whatIsNotStatedComesFromRequirementsAndFlightOrIsAGuess() throws IOException {
        Study study = study("");
        ValueScale endurance = UsualScales.of(study, CriterionName.ENDURANCE);
        assertEquals(60, endurance.acceptable(), "the requirement");
        assertEquals(3600, endurance.enough(), "the whole flight");
        assertFalse(endurance.stated());
        assertTrue(UsualScales.of(study, CriterionName.WEIGHT).because().startsWith("a guess"));
    }

    @Test
    void endsTheWrongWayRoundAreToldWithTheirPlace() throws IOException {
        String told =
                told(
                        """
                        criteria:
                          weight: {acceptable: 12 kg, enough: 20 kg}
                          endurance: {acceptable: 2 h, enough: 2 h}
                          cost: {acceptable: 3000, halfway: 4000, enough: 1000}
                        """);
        assertTrue(told.contains("criteria.weight.enough"), told);
        assertTrue(told.contains("write less for enough than for acceptable"), told);
        assertTrue(told.contains("criteria.endurance.enough"), told);
        assertTrue(told.contains("criteria.cost.halfway"), told);
        assertEquals(3, told.lines().filter(line -> line.contains("criteria.")).count(), told);
    }

    @Test
    void swingsTakeThePlaceOfWeights() throws IOException {
        String swings =
                """
                criteria:
                  endurance: {acceptable: 30 min, enough: 2 h, swing: 60}
                  weight: {acceptable: 20 kg, enough: 12 kg, swing: 100}
                  cost: {acceptable: 4000, enough: 1500}
                """;
        String unweighted = SampleStudy.STUDY.replace("weights: {endurance: 2}\n", "");
        Study study =
                SampleStudy.read(folder, unweighted + swings, SampleStudy.ONE)
                        .study()
                        .orElseThrow();
        assertEquals(
                List.of(
                        new Study.Weight(CriterionName.ENDURANCE, 60),
                        new Study.Weight(CriterionName.WEIGHT, 100)),
                study.goals().weights());
        assertTrue(told(swings).contains("two answers to what counts how much"), told(swings));
        String none =
                SampleStudy.told(
                        SampleStudy.read(
                                folder,
                                unweighted + swings.replace("swing: 100", "swing: 80"),
                                SampleStudy.ONE));
        assertTrue(none.contains("no swing is 100"), none);
    }

    @Test
    void whatIsKnownOfTheOrderGivesWeightsWhereNoneAreWritten() throws IOException {
        String unweighted = SampleStudy.STUDY.replace("weights: {endurance: 2}\n", "");
        String order =
                """
                importance: [engine-stops over pilot-needed, pilot-needed over endurance,
                  endurance over weight, weight over complexity, complexity over cost]
                """;
        Study study =
                SampleStudy.read(folder, unweighted + order, SampleStudy.ONE).study().orElseThrow();
        // rank-order centroid of six: (1 + 1/2 + ... + 1/6) / 6 down to 1/36 (F. Barron,
        // B. Barrett 1996, from memory; computed here)
        assertEquals(2.45 / 6, study.goals().weights().get(0).weight(), 1e-12);
        assertEquals(1 / 36.0, study.goals().weights().get(5).weight(), 1e-12);
    }

    @Test
    void statementsThatContradictEachOtherOrTheWeightsAreTold() throws IOException {
        String circle = told("importance: [weight over cost, cost over weight]\n");
        assertTrue(circle.contains("no weights agree with all of these statements"), circle);
        String strange = told("importance: [weight over comfort, weight]\n");
        assertTrue(strange.contains("there is no criterion \"comfort\""), strange);
        assertTrue(strange.contains("write: weight over cost"), strange);
        String reverse = told("importance: [weight over endurance]\n");
        assertTrue(reverse.contains("weights.endurance"), reverse);
    }

    @Test
    void weightsOfComplexityAreRead() throws IOException {
        Study study = study("complexity: {wire-ends: 0.25, urgent-acts: 4}\n");
        ComplexityWeights weights = study.goals().preferences().complexity();
        assertEquals(0.25, weights.of(ComplexityCount.WIRE_ENDS));
        assertEquals(4, weights.of(ComplexityCount.URGENT_ACTS));
        assertEquals(1, weights.of(ComplexityCount.PARTS));
        String strange = told("complexity: {bolts: 2}\n");
        assertTrue(strange.contains("there is no count \"bolts\""), strange);
    }
}

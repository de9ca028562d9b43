package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.Standing;
import stillturning.desktop.viewmodel.AreaName;
import stillturning.desktop.viewmodel.Desk;
import stillturning.desktop.viewmodel.Destination;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.decide.DifferenceRow.CandidateFailure;
import stillturning.desktop.viewmodel.decide.DifferenceRow.DifferenceGroup;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.model.Study;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.CriterionName;
import stillturning.report.terminal.OtherFindings;

class DecidingTest {

    @TempDir private Path folder;
    private OpenDesk open;
    private Deciding deciding;

    @BeforeEach
    void assess() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        deciding = new Deciding(open.desk(), new OfferedDrawings(open.desk()));
    }

    private WeightSlider slider(CriterionName criterion) {
        return deciding.weights().sliders().stream()
                .filter(s -> s.criterion() == criterion)
                .findFirst()
                .orElseThrow();
    }

    private void only(CriterionName criterion) {
        deciding.weights()
                .sliders()
                .forEach(s -> s.value().set(s.criterion() == criterion ? 4 : 0));
    }

    private static Study weighed(Study study, List<Study.Weight> weights) {
        return study.with(study.goals().preferences().weighed(weights));
    }

    @Test
    void beforeAnythingIsKnownItSaysWhatIsGoingOn() {
        assertTrue(deciding.ranks().isEmpty());
        assertTrue(deciding.notice().get().contains("being broken"), deciding.notice().get());
    }

    @Test
    void whatComplexityIsMadeOfAndWhatThePilotDoesIsTold() {
        open.untilAssessed();
        String said = deciding.complexity().getValue().toString();
        for (ComplexityCount count : ComplexityCount.values()) {
            assertTrue(said.contains(count.words() + ", " + count.because()), count.words());
        }
        assertTrue(said.contains("What the pilot has to do"), said);
        assertTrue(said.contains("by heart"), said);
    }

    @Test
    void ranksFollowTheSlidersAsIfTheStudyHadSaidSo() {
        open.untilAssessed();
        slider(CriterionName.WEIGHT).value().set(9.5);
        slider(CriterionName.ENGINE_STOPS).value().set(0.5);

        Study study = open.desk().study().orElseThrow();
        List<Standing> expected =
                Assess.of(weighed(study, deciding.weights().now()))
                        .ranking()
                        .orElseThrow()
                        .standings();
        assertEquals(
                expected, deciding.now().get().orElseThrow().ranking().orElseThrow().standings());
        assertEquals(
                expected.stream().map(Standing::name).toList(),
                deciding.ranks().stream().map(RankRow::id).toList());
        assertEquals(expected.get(0).total(), deciding.ranks().get(0).standing().total());
    }

    @Test
    void oneCriterionAloneTurnsTheOrderAndResettingTurnsItBack() {
        open.untilAssessed();
        List<String> before = deciding.ranks().stream().map(RankRow::id).toList();
        only(CriterionName.WEIGHT);
        List<String> byWeight = deciding.ranks().stream().map(RankRow::id).toList();
        only(CriterionName.ENDURANCE);
        List<String> byEndurance = deciding.ranks().stream().map(RankRow::id).toList();

        assertTrue(deciding.weights().moved().get());
        deciding.weights().reset();

        assertEquals(before, deciding.ranks().stream().map(RankRow::id).toList());
        assertFalse(deciding.weights().moved().get());
        assertEquals(2, byWeight.size());
        assertEquals(2, byEndurance.size());
    }

    @Test
    void whereNothingCountsTheLastRanksStayAndItIsSaid() {
        open.untilAssessed();
        List<RankRow> before = List.copyOf(deciding.ranks());
        deciding.weights().sliders().forEach(s -> s.value().set(0));

        assertEquals(
                before.stream().map(RankRow::id).toList(),
                deciding.ranks().stream().map(RankRow::id).toList());
        assertTrue(deciding.notice().get().contains("above 0"), deciding.notice().get());
    }

    @Test
    void weightsAreWrittenIntoTheStudyAsOneChange() {
        open.untilAssessed();
        String before = text();
        slider(CriterionName.WEIGHT).value().set(7.5);

        assertEquals(Optional.empty(), deciding.write());
        open.until(() -> stated(CriterionName.WEIGHT) == 7.5);

        assertEquals(Optional.of("Change the weights"), open.desk().texts().get().undo());
        open.untilAssessed();
        assertFalse(deciding.weights().moved().get());
        assertEquals(7.5, slider(CriterionName.WEIGHT).stated());
        open.desk().undo();
        assertEquals(before, text());
    }

    @Test
    void anEditedScaleRanksAndIsWrittenIntoTheStudy() {
        open.untilAssessed();
        String before = text();
        ScaleField weight = scale(CriterionName.WEIGHT);
        weight.enough().set("9 kg");
        weight.acceptable().set("40 kg");

        assertTrue(deciding.scales().moved().get());
        assertEquals(
                40,
                deciding.now().get().orElseThrow().ranking().orElseThrow().scales().stream()
                        .filter(s -> s.criterion().equals(CriterionName.WEIGHT.words()))
                        .findFirst()
                        .orElseThrow()
                        .scale()
                        .worst());
        assertEquals(Optional.empty(), deciding.write());
        open.untilAssessed();
        assertTrue(text().contains("acceptable: 40 kg"), text());
        open.desk().undo();
        assertEquals(before, text());
    }

    @Test
    void aScaleThatMakesNoSenseIsRefusedInWordsAndRanksNothing() {
        open.untilAssessed();
        List<RankRow> before = List.copyOf(deciding.ranks());
        ScaleField weight = scale(CriterionName.WEIGHT);
        weight.enough().set("nine");
        assertTrue(deciding.scales().refusal().get().startsWith("weight: \"nine\""));
        assertEquals(before, deciding.ranks());
        weight.enough().set("99 kg");
        assertTrue(deciding.scales().refusal().get().contains("write less for enough"));
        assertFalse(deciding.write().isEmpty());
    }

    private ScaleField scale(CriterionName criterion) {
        return deciding.scales().fields().stream()
                .filter(f -> f.before().criterion() == criterion)
                .findFirst()
                .orElseThrow();
    }

    private String text() {
        return open.desk().draft().document(Desk.STUDY_FILE).orElseThrow().text();
    }

    private double stated(CriterionName criterion) {
        return open.desk().study().orElseThrow().goals().weights().stream()
                .filter(w -> w.criterion() == criterion)
                .mapToDouble(Study.Weight::weight)
                .sum();
    }

    @Test
    void aDifferenceOpensItsStory() {
        open.untilAssessed();
        SideBySide pair = deciding.sideBySide();

        assertFalse(pair.one().get().equals(pair.other().get()));
        CandidateFailure told =
                pair.rows().stream()
                        .filter(r -> r.story().isPresent())
                        .findFirst()
                        .orElseThrow()
                        .story()
                        .orElseThrow();
        deciding.open(told);
        assertEquals(
                List.of(Destination.of(AreaName.BREAK, told.candidate(), told.failure())),
                open.visited());
        assertTrue(
                deciding
                        .now()
                        .get()
                        .orElseThrow()
                        .of(told.candidate())
                        .orElseThrow()
                        .singles()
                        .stream()
                        .anyMatch(v -> v.failure().name().equals(told.failure())));
    }

    @Test
    void changingSidesTurnsBetterIntoWorse() {
        open.untilAssessed();
        SideBySide pair = deciding.sideBySide();
        List<String> better = failures(pair, DifferenceGroup.BETTER);
        List<String> worse = failures(pair, DifferenceGroup.WORSE);
        pair.swap();

        assertFalse(better.isEmpty() && worse.isEmpty());
        assertEquals(better, failures(pair, DifferenceGroup.WORSE).stream().sorted().toList());
        assertEquals(worse, failures(pair, DifferenceGroup.BETTER).stream().sorted().toList());
    }

    private static List<String> failures(SideBySide pair, DifferenceGroup group) {
        return pair.rows().stream()
                .filter(r -> r.group() == group)
                .map(DifferenceRow::what)
                .sorted()
                .toList();
    }

    @Test
    void everyCandidateButTheBaselineDepartsFromIt() {
        open.untilAssessed();

        assertEquals(
                List.of("bus-and-battery"),
                deciding.departures().all().stream().map(d -> d.candidate()).toList());
        assertTrue(deciding.departures().baseline().get().startsWith("Departures from"));
    }

    @Test
    void requirementsStandByCandidateInTheOrderOfTheStudysOwnRanking() {
        open.untilAssessed();
        Assessment found = open.desk().results().get().assessment().orElseThrow();
        List<Appraisal> appraisals = deciding.appraisals().get();

        assertEquals(
                found.ranking().orElseThrow().standings().stream().map(s -> s.name()).toList(),
                appraisals.stream().map(a -> a.candidate().id()).toList());
        appraisals.forEach(a -> assertEquals(1, a.met().size()));
    }

    @Test
    void everyCandidatesRequirementsAndMissingWarningsAreSaid() {
        open.untilAssessed();
        assertEquals(2, deciding.ranks().size());
        deciding.ranks()
                .forEach(row -> assertEquals("\u2713 meets every requirement", row.requirements()));
        assertEquals(
                OtherFindings.missingWarnings(deciding.appraisals().get()), deciding.warnings());
    }
}

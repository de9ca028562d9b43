package stillturning.assess.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.Attribution.AttributedShare;
import stillturning.assess.requirement.Survey;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Requirement;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.goal.CriterionName;
import stillturning.parts.Part;
import stillturning.parts.Tag;
import stillturning.parts.Tag.Burden;
import stillturning.parts.source.Battery;

class ExchangeTest {

    private static final Study SANDPIPER = read("architectures/sandpiper");
    private static final double EXACT = 1e-9;

    private static Assessment basis;
    private static Attribution whole;

    @BeforeAll
    static void assess() {
        Study small = read("architectures/first-steps");
        Candidate heavy = small.candidates().get(1).with(ExchangeTest::heavier);
        basis = Assess.of(with(small, List.of(small.candidates().get(0), heavy)));
        List<Appraisal> two = basis.appraisals();
        whole = new Exchange(basis).all(two.get(0), two.get(1), done -> {});
    }

    private static Study read(String folder) {
        return StudyReader.read(Path.of(folder)).study().orElseThrow();
    }

    private static Study with(Study study, List<Candidate> candidates) {
        return new Study(study.id(), study.heading(), study.aircraft(), study.goals(), candidates);
    }

    /** A battery of 3 kg more, otherwise the same. */
    private static Part heavier(Part part) {
        if (!(part instanceof Battery b)) {
            return part;
        }
        Tag tag = b.tag();
        Burden more = new Burden(tag.burden().kilograms() + 3, tag.burden().price());
        return new Battery(
                new Tag(tag.id(), tag.label(), tag.zone(), more),
                b.openCircuit(),
                b.cells(),
                b.capacity(),
                b.ohms(),
                b.chargeAtStart(),
                b.management());
    }

    @Test
    void sharesSumToTheWholeDifferenceOfEachCriterion() {
        assertTrue(whole.shares().size() > 1, "only one group");
        assertFalse(whole.difference().isEmpty());
        whole.difference()
                .forEach(
                        (criterion, difference) ->
                                assertEquals(
                                        difference,
                                        sum(criterion),
                                        EXACT * Math.max(1, Math.abs(difference)),
                                        criterion.words()));
        assertEquals(
                whole.all().points() - whole.none().points(),
                whole.shares().stream().mapToDouble(AttributedShare::points).sum(),
                EXACT);
        assertEquals(
                whole.all().missed() - whole.none().missed(),
                whole.shares().stream().mapToDouble(AttributedShare::missed).sum(),
                EXACT);
    }

    private static double sum(CriterionName criterion) {
        return whole.shares().stream()
                .mapToDouble(s -> s.values().getOrDefault(criterion, 0.0))
                .sum();
    }

    @Test
    void everyMixOfTheGroupsIsThere() {
        assertEquals(1 << whole.shares().size(), whole.mixes().size());
        assertEquals(
                whole.mixes().size(),
                whole.mixes().stream().map(Mix::exchanged).distinct().count());
    }

    @Test
    void whatABatteryWeighsMoreIsTheBatteriesShare() {
        AttributedShare batteries = share(Group.BATTERIES);
        assertEquals(3, batteries.values().getOrDefault(CriterionName.WEIGHT, 0.0), EXACT);
        assertEquals(0, batteries.values().getOrDefault(CriterionName.COMPLEXITY, 1.0), EXACT);
        assertFalse(batteries.isLayout());
    }

    private static AttributedShare share(Group group) {
        return whole.shares().stream()
                .filter(s -> s.together().contains(group))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void withEverythingExchangedAMixIsTheOtherCandidate() {
        List<Appraisal> two = basis.appraisals();
        Candidate mix =
                new Mixing(two.get(0).candidate(), two.get(1).candidate())
                        .mix(EnumSet.allOf(Group.class))
                        .orElseThrow();
        Assessment again = Assess.of(with(basis.study(), List.of(mix)));
        two.get(1)
                .measures()
                .values()
                .forEach(
                        (criterion, value) ->
                                assertEquals(
                                        value,
                                        again.appraisals()
                                                .get(0)
                                                .measures()
                                                .values()
                                                .getOrDefault(criterion, Double.NaN),
                                        1e-3 * Math.max(1, Math.abs(value)),
                                        criterion.words()));
    }

    /** Every two candidates of the demo, in both directions: the same parts, joined alike. */
    @Test
    void fromAnyCandidateAnyOtherIsReachedAndNothingExchangedIsItself() {
        for (Candidate one : SANDPIPER.candidates()) {
            for (Candidate other : SANDPIPER.candidates()) {
                Mixing mixing = new Mixing(one, other);
                String names = one.id() + ", " + other.id();
                assertSame(one, mixing.mix(EnumSet.noneOf(Group.class)).orElseThrow(), names);
                assertSame(other, mixing.mix(EnumSet.allOf(Group.class)).orElseThrow(), names);
            }
        }
    }

    private static void assertSame(Candidate expected, Candidate mix, String names) {
        assertEquals(byId(expected), byId(mix), names);
        assertEquals(nets(expected), nets(mix), names);
        assertEquals(expected.cockpit().procedures(), mix.cockpit().procedures(), names);
        assertEquals(expected.cockpit().cues(), mix.cockpit().cues(), names);
        assertEquals(expected.cockpit().flight(), mix.cockpit().flight(), names);
    }

    private static Map<String, Part> byId(Candidate candidate) {
        Map<String, Part> parts = new HashMap<>();
        candidate.parts().forEach(p -> parts.put(p.id(), p));
        return parts;
    }

    private static Set<Set<Terminal>> nets(Candidate candidate) {
        return Nets.of(candidate).all().stream().map(Set::copyOf).collect(Collectors.toSet());
    }

    @Test
    void batteriesAloneDifferWhereOnlyChemistryWasChanged() {
        assertEquals(
                Map.of(Group.BATTERIES, List.of("main-battery", "engine-battery")),
                differences("split-batteries", "split-batteries-lithium"));
    }

    @Test
    void aControllerInThePlaceOfBreakersIsAMatterOfProtectionAndSwitching() {
        Map<Group, List<String>> found = differences("split-batteries", "solid-state-split-engine");
        assertFalse(found.containsKey(Group.BATTERIES), found.toString());
        assertFalse(found.containsKey(Group.CHARGING), found.toString());
        List<String> switching = new ArrayList<>(found.getOrDefault(Group.SWITCHING, List.of()));
        assertTrue(switching.contains("controller"), switching.toString());
        assertTrue(switching.contains("radio-breaker"), switching.toString());
        assertTrue(switching.contains("alternator-switch"), switching.toString());
    }

    private static Map<Group, List<String>> differences(String one, String other) {
        return Exchange.differences(
                SANDPIPER.candidate(one).orElseThrow(), SANDPIPER.candidate(other).orElseThrow());
    }

    /**
     * The same layout once with a heavier battery: with equal ones nothing is left between them.
     */
    @Test
    void candidatesThatDifferInABatteryAloneAreLevelWithEqualOnes() {
        Study small = read("architectures/first-steps");
        Candidate light = small.candidates().get(0);
        Candidate heavy = renamed(light.with(ExchangeTest::heavier));
        Assessment two = Assess.of(with(small, List.of(light, heavy)));
        EqualBatteries equal = EqualBatteries.of(two, done -> {}).orElseThrow();
        assertEquals(light.id(), equal.leader());
        Attribution rival = equal.turning().get(0);
        assertEquals(heavy.id(), rival.from().id());
        assertEquals(0, EqualBatteries.ifBothHaveTheLeaders(rival));
        assertEquals(0, EqualBatteries.ifBothHaveTheRivals(rival));
        assertEquals(List.of(light.id(), heavy.id()), equal.firstWithTheLeaders());
        assertEquals(0, rival.ifBothHaveTheFirsts(rival.shares().get(0)));
        assertEquals(0, rival.ifBothHaveTheSeconds(rival.shares().get(0)));
        assertEquals(
                rival.all().points() - rival.none().points(),
                rival.shares().get(0).points(),
                EXACT);
        assertTrue(rival.turnedBy(rival.shares().get(0)));
    }

    /** Sizes are looked at where the two stand in the study, and not for mixes of them. */
    @Test
    void whatMixesAreNotHeldAgainstTurnsNoOrder() {
        Study small = read("architectures/first-steps");
        List<Requirement> more = new ArrayList<>(small.goals().requirements());
        more.add(new Requirement.NoSizeLimitBroken());
        Candidate light = small.candidates().get(0);
        Study asking =
                new Study(
                        small.id(),
                        small.heading(),
                        small.aircraft(),
                        small.goals().requiring(more),
                        List.of(light, renamed(light.with(ExchangeTest::heavier))));
        Survey met =
                (requirement, candidate) ->
                        Optional.of(
                                new RequirementMet(
                                        requirement.inWords(), true, "none is", List.of()));
        Assessment two = Assess.of(asking, met, done -> {});
        Attribution rival = EqualBatteries.of(two, done -> {}).orElseThrow().rivals().get(0);
        assertEquals(0, EqualBatteries.ifBothHaveTheLeaders(rival));
        assertEquals(List.of(new Requirement.NoSizeLimitBroken()), Exchange.aside(asking.goals()));
    }

    private static Candidate renamed(Candidate c) {
        return new Candidate("heavy", "Heavy", c.about(), c.parts(), c.joins(), c.cockpit());
    }
}

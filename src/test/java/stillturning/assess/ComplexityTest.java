package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.SampleStudy;
import stillturning.model.Candidate;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;

/** What is counted, and that nothing is counted twice. */
class ComplexityTest {

    private static final String CONTROLLER =
            """
              controller:
                is: controller
                zone: panel
                channels: [10 A, 5 A]
            """;

    @TempDir Path folder;

    private Candidate candidate(String one) throws IOException {
        ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, one);
        return read.study()
                .orElseThrow(() -> new AssertionError(SampleStudy.told(read)))
                .candidate("one")
                .orElseThrow(() -> new AssertionError(SampleStudy.told(read)));
    }

    private static Complexity of(Candidate candidate) {
        return Complexity.of(candidate, 0, PilotBurden.of(candidate));
    }

    private static int count(Candidate candidate, ComplexityCount count) {
        return of(candidate).count(count);
    }

    // Counted by hand in the sample's text.
    @Test
    void aProtectorIsNoPartBesideAndAWireHasTwoEnds() throws IOException {
        Candidate one = candidate(SampleStudy.ONE);
        assertEquals(6, count(one, ComplexityCount.PROTECTORS));
        assertEquals(9, count(one, ComplexityCount.PARTS));
        assertEquals(2 * one.wires().count(), count(one, ComplexityCount.WIRE_ENDS));
    }

    @Test
    void aBreakerThatCanBePulledHasPositionsAndAFuseHasNone() throws IOException {
        Candidate breaker = candidate(SampleStudy.ONE);
        Candidate fuse =
                candidate(
                        SampleStudy.ONE.replace(
                                "radio: from main-bus, breaker 5 A",
                                "radio: from main-bus, fuse 5 A"));
        assertEquals(
                2,
                count(breaker, ComplexityCount.LEVER_POSITIONS)
                        - count(fuse, ComplexityCount.LEVER_POSITIONS));
        assertEquals(
                count(breaker, ComplexityCount.PROTECTORS),
                count(fuse, ComplexityCount.PROTECTORS));
    }

    @Test
    void aChannelCountsAsTheBreakerThatItStandsForAndAsSoftware() throws IOException {
        Candidate breaker = candidate(SampleStudy.ONE);
        Candidate channel =
                candidate(
                        SampleStudy.ONE
                                .replace("  main-bus: {", CONTROLLER + "  main-bus: {")
                                .replace(
                                        "feeds:\n",
                                        "  controller-supply: from main-bus to controller.supply,"
                                                + " direct\n"
                                                + "  controller-ground: from controller.ground to"
                                                + " panel-ground, direct\n"
                                                + "feeds:\n")
                                .replace(
                                        "radio: from main-bus, breaker 5 A",
                                        "radio: from controller channel 2"));
        assertEquals(
                count(breaker, ComplexityCount.PROTECTORS),
                count(channel, ComplexityCount.PROTECTORS));
        assertEquals(
                count(breaker, ComplexityCount.LEVER_POSITIONS),
                count(channel, ComplexityCount.LEVER_POSITIONS));
        assertEquals(
                2,
                count(channel, ComplexityCount.SOFTWARE_FUNCTIONS),
                "the channel and the logic; the unused channel is none");
        assertEquals(
                1, count(channel, ComplexityCount.PARTS) - count(breaker, ComplexityCount.PARTS));
    }

    @Test
    void anActInTwoProceduresIsOneActAndByHeartIfOneOfThemIsUrgent() throws IOException {
        Candidate one =
                candidate(
                        SampleStudy.ONE.replace(
                                "procedures:\n",
                                "procedures:\n  now: {when: [lamp], after: 5 s, sheds: [radio]}\n"
                                        + "  later: {when: [lamp], after: 5 min, sheds: [radio],"
                                        + " moves: {master: off}}\n"));
        PilotBurden pilot = PilotBurden.of(one);
        assertEquals(Set.of("radio off", "pump-breaker pulled"), pilot.byHeart());
        assertEquals(Set.of("master off"), pilot.withTimeInHand());
        assertEquals(2, count(one, ComplexityCount.URGENT_ACTS));
        assertEquals(1, count(one, ComplexityCount.UNHURRIED_ACTS));
        assertEquals(Set.of("lamp"), pilot.cuesToKnow());
        assertEquals(
                List.of("master off", "now", "later", "shed"),
                pilot.tasks().stream().map(PilotBurden.Task::name).toList());
    }

    @Test
    void theIndexIsTheSumOfTheCountsByTheirWeights() throws IOException {
        Complexity complexity = of(candidate(SampleStudy.ONE));
        double sum = 0;
        for (ComplexityCount count : ComplexityCount.values()) {
            sum += complexity.count(count) * count.usualWeight();
        }
        assertEquals(sum, complexity.index(ComplexityWeights.USUAL), 1e-9);
        ComplexityWeights other = new ComplexityWeights(Map.of(ComplexityCount.WIRE_ENDS, 0.0));
        assertEquals(
                sum - 0.5 * complexity.count(ComplexityCount.WIRE_ENDS),
                complexity.index(other),
                1e-9);
        assertTrue(complexity.count(ComplexityCount.WIRE_ENDS) > 0);
    }
}

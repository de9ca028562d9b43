package stillturning.assess.crosscheck;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.Assess;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.files.Starter;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.StarterAnswers;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.EngineLogic;
import stillturning.model.Study;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.joining.Connector;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.structure.Removal;
import stillturning.structure.Structure;

/** Shape and stories, each made without the other, say the same of every part removed. */
class CrossCheckTest {

    private static final int DRAWN = 400;

    private static Study shipped(String name) {
        return StudyReader.read(Path.of("architectures", name)).study().orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(strings = {"sandpiper", "first-steps"})
    void shippedStudiesHaveNothingUnexplained(String name) throws UntoldStory {
        Study study = shipped(name);
        int lost = 0;
        for (Candidate candidate : study.candidates()) {
            List<Removal> removals = Structure.removals(study.aircraft(), candidate);
            assertTrue(removals.get(0).supplied(), candidate.id());
            assertEquals(candidate.parts().size() + 1, removals.size());
            lost += (int) removals.stream().filter(r -> !r.supplied()).count();
            for (Disagreement found : Assess.secondOpinion(study, candidate).disagreements()) {
                assertTrue(found.explained(), candidate.id() + ": " + found);
            }
        }
        assertTrue(lost > 0, name + ": nothing that could be missed");
    }

    /** In wood no structure joins the returns, for the shape as little as for the stories. */
    @Test
    void aWoodenAircraftHasNothingUnexplained(@TempDir Path folder) throws UntoldStory {
        StarterAnswers wood =
                new StarterAnswers(
                        "Wood",
                        new Counts(2, 2, 2, 2),
                        LoadProtection.BREAKERS,
                        Nominal.FOURTEEN_VOLTS,
                        AirframeStructure.NONE);
        assertEquals(List.of(), Starter.write(folder.resolve("wood"), wood));
        Study study = StudyReader.read(folder.resolve("wood")).study().orElseThrow();
        for (Candidate candidate : study.candidates()) {
            for (Disagreement found : Assess.secondOpinion(study, candidate).disagreements()) {
                assertTrue(found.explained(), candidate.id() + ": " + found);
            }
        }
    }

    /** What cannot be computed is refused by name, and then says nothing of the shape. */
    @Test
    void candidatesDrawnByLotHaveNothingUnexplained() {
        int refused = 0;
        int lost = 0;
        int kept = 0;
        Set<StoryOnlyFact> seen = EnumSet.noneOf(StoryOnlyFact.class);
        List<Disagreement> all = new ArrayList<>();
        for (long seed = 0; seed < DRAWN; seed++) {
            Study study = new RandomShape(seed).study;
            Candidate candidate = study.candidates().get(0);
            try {
                for (Disagreement found : Assess.secondOpinion(study, candidate).disagreements()) {
                    assertTrue(found.explained(), "seed " + seed + ": " + found);
                    seen.addAll(found.because());
                    all.add(found);
                }
            } catch (UntoldStory e) {
                refused++;
            }
            List<Removal> removals = Structure.removals(study.aircraft(), candidate);
            if (removals.get(0).supplied()) {
                kept += (int) removals.stream().filter(Removal::supplied).count();
                lost += (int) removals.stream().filter(r -> !r.supplied()).count();
            }
        }
        String counts = refused + " refused, " + lost + " lost, " + kept + " kept, " + all.size();
        assertTrue(refused < DRAWN / 30 && lost > DRAWN && kept > DRAWN, counts);
        assertTrue(all.size() > DRAWN / 10 && all.size() < (lost + kept) / 10, counts);
        // shape and story agree on what steadies an alternator, so that it explains nothing here
        assertTrue(seen.size() > 5, seen.toString());
    }

    /** A battery through one connector to both inputs of a computer, and another round it. */
    private static Bench twoFeeds() {
        return new Bench()
                .battery("battery", 20, 0.01, 1)
                .part(new Connector(Bench.tag("j1"), 2, 1e-3))
                .join("battery", "plus", "j1", "1a")
                .join("battery", "plus", "j1", "2a")
                .load("computer", DemandKind.CONSTANT_POWER, 2, Bench.HARDY)
                .join("j1", "1b", "computer", "plus")
                .join("j1", "2b", "computer", "plus")
                .engine(new EngineLogic.One("computer"), false);
    }

    @Test
    void aSharedConnectorIsLostByBothAndSoNoDisagreement() throws UntoldStory {
        Bench bench = twoFeeds();
        assertEquals(
                List.of(), Assess.secondOpinion(bench.study(), bench.candidate()).disagreements());
        Removal j1 =
                Structure.without(
                        bench.study().aircraft(), bench.candidate(), Optional.of("j1"), Set.of());
        assertEquals("the only feed of computer", j1.evidence());
    }

    /** A way round the connector that only a hand can close, and no warning that calls for it. */
    @Test
    void aSwitchThatNoWarningCallsForIsNamedAsTheReason() throws UntoldStory {
        Bench bench =
                twoFeeds()
                        .closedSwitch("bypass", "off")
                        .join("battery", "plus", "bypass", "in")
                        .join("bypass", "out", "computer", "plus")
                        .procedure("by-pass", List.of(), 5, Map.of("bypass", "on"));
        List<Disagreement> found =
                Assess.secondOpinion(bench.study(), bench.candidate()).disagreements();
        assertEquals(1, found.size(), found.toString());
        Disagreement j1 = found.get(0);
        assertEquals(Optional.of("j1"), j1.part());
        assertTrue(j1.structureSays() && !j1.storySays());
        assertEquals("computer by battery and bypass", j1.structureEvidence());
        assertEquals(List.of(StoryOnlyFact.PILOT), j1.because());
        assertTrue(
                j1.storyEvidence().stream()
                        .anyMatch(h -> h.kind() == StoryEvent.Kind.ENGINE_STOPS && h.seconds() > 0),
                j1.storyEvidence().toString());
    }

    /**
     * Without its wire the contact that is fed gives nothing, and the coil holds the other open.
     */
    @Test
    void aRelayThatDoesNotFallBackWhileItsCoilIsFedIsNamedAsTheReason() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.01, 1)
                        .battery("standby", 20, 0.01, 1)
                        .part(Shelf.changeoverRelay("relay"))
                        .wire("feed", 1, 0.02)
                        .join("battery", "plus", "relay", "coil-plus")
                        .join("relay", "coil-minus", "ground", "stud")
                        .join("battery", "plus", "feed", "a")
                        .join("feed", "b", "relay", "normally-open")
                        .join("standby", "plus", "relay", "normally-closed")
                        .load("computer", DemandKind.CONSTANT_POWER, 2, Bench.HARDY)
                        .join("relay", "common", "computer", "plus")
                        .engine(new EngineLogic.One("computer"), false);
        List<Disagreement> found =
                Assess.secondOpinion(bench.study(), bench.candidate()).disagreements();
        assertEquals(1, found.size(), found.toString());
        assertEquals(Optional.of("feed"), found.get(0).part());
        assertEquals(List.of(StoryOnlyFact.RESTING_CONTACT), found.get(0).because());
    }

    @Test
    void aBatteryThatRunsDownAtOnceIsNamedAsTheReason() throws UntoldStory {
        Bench bench = twoFeeds().battery("tiny", 0.001, 0.01, 1).join("tiny", "plus", "j1", "1b");
        List<Disagreement> found =
                Assess.secondOpinion(bench.study(), bench.candidate()).disagreements();
        Set<String> parts = new HashSet<>();
        found.forEach(one -> parts.add(one.part().orElse("nothing")));
        assertEquals(Set.of("battery", "j1"), parts, found.toString());
        found.forEach(one -> assertEquals(List.of(StoryOnlyFact.TIME), one.because()));
    }

    /** Whatever is joined at a bar is apart once the bus is gone, bar and all. */
    @Test
    void aBusIsRemovedWithItsBar() throws UntoldStory {
        Bench bench =
                new Bench()
                        .battery("battery", 20, 0.01, 1)
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_POWER, 2, Bench.HARDY)
                        .join("bus", "bar", "computer", "plus")
                        .engine(new EngineLogic.One("computer"), false);
        assertEquals(
                List.of("battery", "computer"),
                WithoutPart.of(bench.candidate(), "bus").hits().stream()
                        .map(hit -> hit.part())
                        .toList());
        assertEquals(
                List.of(), Assess.secondOpinion(bench.study(), bench.candidate()).disagreements());
    }
}

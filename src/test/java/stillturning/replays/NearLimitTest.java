package stillturning.replays;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.NearLimit;
import stillturning.assess.NothingBroken;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.report.NormalFlightTexts;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** Protectors that carry so much in a flight with nothing wrong that they may open. */
class NearLimitTest {

    private static NothingBroken flown(String report) throws UntoldStory {
        Study study = StudyReader.read(Replay.FOLDER.resolve(report)).study().orElseThrow();
        return Assess.undisturbed(study, study.candidates().get(0));
    }

    @Test
    void aBreakerThatOpensOnlyAtFullPowerIsNamedAlthoughCruiseIsWell() throws UntoldStory {
        // event 20210708103439 (NTSB): the 15 A breaker held in the run on the ground, and not at
        // full power. 125 %: above what every one of its class carries, below where every one opens
        NothingBroken flight = flown("event-20210708103439");
        assertFalse(flight.unwell());
        NearLimit near = flight.nearLimit().orElseThrow();
        assertTrue(near.early());
        assertEquals("computer-feed-breaker", near.protector());
        assertEquals(1, near.flight().of(StoryEvent.Kind.ENGINE_STOPS).size());
        assertTrue(NormalFlightTexts.nearLimit(flight).get(0).contains("5 min"));
    }

    @Test
    void whatTheHeldPhaseTellsAlreadyIsNotToldTwice() throws UntoldStory {
        NothingBroken flight = flown("lax08la066");
        assertTrue(flight.unwell());
        assertTrue(flight.nearLimit().isEmpty());
    }

    @Test
    void aProtectorWithRoomIsNotNamed() throws UntoldStory {
        assertTrue(flown("cen20la412").nearLimit().isEmpty());
    }
}

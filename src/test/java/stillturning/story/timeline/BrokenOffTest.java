package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.assess.verdict.Judge;
import stillturning.assess.verdict.Outcome;
import stillturning.assess.verdict.Remark;
import stillturning.assess.verdict.Verdict;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.report.OutcomeMark;
import stillturning.report.ResultText;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** A story that cannot be told to its end is told as far as it goes. */
class BrokenOffTest {

    /** Hours of discharge in so many steps that the story gives up after seven of them. */
    private static final double STEP_SECONDS = 0.5;

    private static final double GIVES_UP_SECONDS = 50_000 * STEP_SECONDS;
    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    private final Bench bench =
            new Bench()
                    .part(Shelf.lead("battery", 40, 0.1, 1))
                    .join("battery", "minus", "ground", "stud")
                    .bus("bus")
                    .join("battery", "plus", "bus", "bar")
                    .load("computer", DemandKind.CONSTANT_POWER, 2, Bench.HARDY)
                    .join("computer", "plus", "bus", "bar")
                    .engine(new EngineLogic.One("computer"), true);

    private Timeline timeline() throws UntoldStory {
        Moment moment = Moment.heldIn(bench.study().goals().failurePhase().name());
        return new Timeline(bench.study(), bench.candidate(), moment, STEP_SECONDS);
    }

    @Test
    void itIsToldAsFarAsItGoesAndSaysWhy() throws UntoldStory {
        Story story = timeline().tellAsFar(NOTHING, Setting.with(Pilot.NEVER));
        Endurance endurance = story.engine().endurance();
        assertInstanceOf(Endurance.Untold.class, endurance);
        assertEquals(GIVES_UP_SECONDS, endurance.seconds(), 2 * STEP_SECONDS);
        StoryEvent last = story.happenings().get(story.happenings().size() - 1);
        assertEquals(StoryEvent.Kind.UNTOLD, last.kind());
        String reason = story.untold().orElseThrow();
        assertTrue(reason.contains("battery"), reason);
        assertTrue(last.words().contains(reason), last.words());
        assertTrue(!story.engine().runningAtEnd());
        assertTrue(story.traces().get(0).points().size() <= Recorder.MOST_POINTS);
    }

    @Test
    void whoAsksForTheWholeStoryIsRefused() throws UntoldStory {
        Timeline timeline = timeline();
        UntoldStory refusal =
                assertThrows(UntoldStory.class, () -> timeline.tell(NOTHING, Pilot.NEVER));
        assertTrue(String.valueOf(refusal.getMessage()).contains("battery"));
    }

    /** The same story in longer steps is told to its end, and ends well. */
    @Test
    void aStoryThatCanBeToldIsTheSameEitherWay() throws UntoldStory {
        Setting setting = Setting.with(Pilot.NEVER);
        Timeline whole = bench.timeline();
        assertEquals(whole.tell(NOTHING, setting), whole.tellAsFar(NOTHING, setting));
    }

    /** However long it ran until then: nobody knows how it goes on. */
    @Test
    void itCountsAsEngineLostWithTheReasonBesideIt() throws UntoldStory {
        assertTrue(bench.study().goals().enoughSeconds() < GIVES_UP_SECONDS);
        Verdict verdict = new Judge(bench.study(), timeline()).judge(NOTHING);
        assertEquals(Outcome.ENGINE_LOST, verdict.outcome());
        assertTrue(verdict.untold().orElseThrow().contains("battery"));
        Remark remark = verdict.remarks().get(0);
        assertEquals(Remark.Topic.UNTOLD, remark.topic());
        assertTrue(remark.words().contains("battery"), remark.words());
        assertEquals("LOST?", OutcomeMark.code(verdict));
        assertEquals(
                "cannot be told beyond 6 h 56 min",
                ResultText.endurance(verdict.planned().engine().endurance()));
    }
}

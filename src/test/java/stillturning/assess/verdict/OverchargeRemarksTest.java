package stillturning.assess.verdict;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.story.UntoldStory;

/** What is said beside the outcome of a runaway that only a battery holds down. */
class OverchargeRemarksTest {

    /**
     * 15 A less 6 A of load and V/4 of field: 20 Ah hold them at 16.6 V, by the late law at 17.3 V.
     */
    private static Verdict runaway(double withstandVolts) throws UntoldStory {
        Bench bench =
                new Bench()
                        .part(Shelf.lead("battery", 20, 0.02, 1))
                        .join("battery", "minus", "ground", "stud")
                        .part(Shelf.alternator("alternator", 14.2, 15, false))
                        .join("alternator", "case", "ground", "stud")
                        .bus("bus")
                        .join("battery", "plus", "bus", "bar")
                        .join("alternator", "output", "bus", "bar")
                        .join("alternator", "field", "bus", "bar")
                        .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                        .join("computer", "plus", "bus", "bar")
                        .load(
                                "radio",
                                DemandKind.CONSTANT_CURRENT,
                                1,
                                new Tolerance(9, 10, 0.02, 0.5, withstandVolts, 0.1))
                        .join("radio", "plus", "bus", "bar")
                        .engine(new EngineLogic.One("computer"), true);
        return new Judge(bench.study(), bench.timeline())
                .judge(bench.failure("alternator: over-voltage"));
    }

    private static List<Remark.Topic> topics(Verdict verdict) {
        return verdict.remarks().stream().map(Remark::topic).toList();
    }

    /** Held at 16.6 V until the battery has boiled dry, at 19 V after that. */
    @Test
    void whatIsDestroyedLaterIsSaidBesideTheOutcome() throws UntoldStory {
        Verdict verdict = runaway(18.5);
        assertEquals(List.of(Remark.Topic.LOSS_LATER, Remark.Topic.WITHIN_REACH), topics(verdict));
        String words = verdict.remarks().get(0).words();
        assertTrue(words.startsWith("ends in loss after "), words);
        assertTrue(words.endsWith(" if nobody acts: of battery, radio"), words);
    }

    @Test
    void anOutcomeThatHangsOnTheLawOfGassingSaysSo() throws UntoldStory {
        Verdict verdict = runaway(17);
        assertTrue(topics(verdict).contains(Remark.Topic.OVERCHARGE), verdict.remarks().toString());
        assertTrue(
                verdict.remarks().stream()
                        .anyMatch(r -> r.words().endsWith(Outcome.LOADS_LOST.words())),
                verdict.remarks().toString());
    }

    @Test
    void aRunawayThatDestroysAtOnceHasNoLaterLossOfTheSame() throws UntoldStory {
        Verdict verdict = runaway(15);
        assertEquals(Outcome.LOADS_LOST, verdict.outcome());
        assertTrue(
                verdict.remarks().stream().noneMatch(r -> r.words().contains("radio")),
                verdict.remarks().toString());
    }
}

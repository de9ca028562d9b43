package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Bench;
import stillturning.bench.Shelf;
import stillturning.model.EngineLogic;
import stillturning.model.failure.Failure;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.source.Battery;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.Trace.TracePoint;
import stillturning.story.UntoldStory;

/** Batteries that are joined and level out. */
class EqualisingTest {

    private static final Failure TIED = Failure.levers("tied", Map.of("tie", "on"));

    /** Two batteries that a switch of 5 mohm joins, and a computer aside. */
    private static Bench pair(Battery one, Battery other) {
        return new Bench()
                .part(Shelf.lead("own", 100, 0.02, 1))
                .join("own", "minus", "ground", "stud")
                .load("computer", DemandKind.CONSTANT_CURRENT, 0.5, Bench.HARDY)
                .join("computer", "plus", "own", "plus")
                .engine(new EngineLogic.One("computer"), true)
                .part(one)
                .part(other)
                .join(one.id(), "minus", "ground", "stud")
                .join(other.id(), "minus", "ground", "stud")
                .closedSwitch("tie", "off")
                .join(one.id(), "plus", "tie", "in")
                .join(other.id(), "plus", "tie", "out");
    }

    /**
     * Computed here: on one straight piece of the curve the difference of charge decays as exp(-2 s
     * t / (R Q)), with s the slope (V per charge), R 10 + 10 + 5 mohm, Q the capacity (C) of each.
     */
    @Test
    void onAStraightPieceTheDifferenceDecaysExponentially() throws UntoldStory {
        Bench bench =
                pair(
                        Shelf.lithium("fuller", 20, 0.68, Shelf.LENIENT),
                        Shelf.lithium("emptier", 20, 0.42, Shelf.LENIENT));
        Timeline timeline =
                new Timeline(bench.study(), bench.candidate(), Moment.heldIn("cruise"), 120);
        Story story = timeline.tell(TIED, Pilot.NEVER);
        double slope = (13.3 - 13.2) / (0.70 - 0.40);
        double rate = 2 * slope / (0.025 * 20 * 3600);
        var fuller = Telling.trace(story, "fuller").points();
        var emptier = Telling.trace(story, "emptier").points();
        int looked = 0;
        for (int i = 0; i < fuller.size() && fuller.get(i).seconds() < 10_000; i++) {
            TracePoint high = fuller.get(i);
            double expected = (68 - 42) * Math.exp(-rate * high.seconds());
            assertEquals(expected, high.value() - emptier.get(i).value(), 1e-5);
            assertEquals(110, high.value() + emptier.get(i).value(), 1e-5);
            looked++;
        }
        assertTrue(looked > 50);
    }

    @Test
    void aFullBatteryThatPoursIntoAFlatOneIsTold() throws UntoldStory {
        // 12.65 V against 11.225 V behind 10 mohm, 5 mohm, and 10 mohm x 1.85: 42.5 A, more than
        // the
        // 20 A that would fill it in an hour, and more than the 19 A it accepts easily
        Bench bench = pair(Shelf.lead("full", 60, 0.01, 1), Shelf.lead("flat", 20, 0.01, 0.05));
        Story story = bench.timeline().tell(TIED, Pilot.NEVER);
        assertEquals(0, Telling.when(story, StoryEvent.Kind.BATTERIES_EQUALISE, "flat"));
        double accepts = 20 * 0.951;
        double beyond = (12.65 - 11.225 - accepts * 0.0335) / (0.0335 + 2 / accepts);
        String words = story.of(StoryEvent.Kind.BATTERIES_EQUALISE).get(0).words();
        assertTrue(words.contains(Math.round(accepts + beyond) + " A"), words);
    }

    @Test
    void anAlternatorThatChargesABatteryQuicklyIsNoOtherBattery() throws UntoldStory {
        Bench bench =
                pair(
                                Shelf.lithium("one", 5, 0.3, Shelf.LENIENT),
                                Shelf.lithium("other", 5, 0.3, Shelf.LENIENT))
                        .part(Shelf.alternator("alternator", 14.2, 45, false))
                        .join("alternator", "case", "ground", "stud")
                        .join("alternator", "field", "own", "plus")
                        .join("alternator", "output", "tie", "in");
        assertTrue(bench.timeline().normal().sourceAmps().getOrDefault("one", 0.0) < -5);
        Story story = bench.timeline().tell(TIED, Pilot.NEVER);
        assertEquals(0, Telling.count(story, StoryEvent.Kind.BATTERIES_EQUALISE));
    }

    /**
     * A small battery pours into a flat one, so that the bus sags for some minutes until a small
     * alternator has lifted both. A radio stops that needs a little more than the lowest voltage.
     */
    private static Bench sagging(double minimumVolts) {
        return new Bench()
                .part(Shelf.lead("small", 0.5, 0.02, 1))
                .part(Shelf.lead("flat", 5, 0.05, 0.3))
                .join("small", "minus", "ground", "stud")
                .join("flat", "minus", "ground", "stud")
                .bus("bus")
                .part(Shelf.alternator("alternator", 14.2, 12, false))
                .join("alternator", "case", "ground", "stud")
                .join("alternator", "field", "bus", "bar")
                .join("alternator", "output", "bus", "bar")
                .closedSwitch("tie", "off")
                .join("small", "plus", "bus", "bar")
                .join("bus", "bar", "tie", "in")
                .join("tie", "out", "flat", "plus")
                .load("computer", DemandKind.CONSTANT_CURRENT, 5, Bench.HARDY)
                .load(
                        "radio",
                        DemandKind.CONSTANT_CURRENT,
                        1,
                        new Tolerance(minimumVolts, minimumVolts, 0, 0, 40, 1))
                .join("computer", "plus", "bus", "bar")
                .join("radio", "plus", "bus", "bar")
                .engine(new EngineLogic.One("computer"), true);
    }

    private static Story tied(Bench bench, double longestStepSeconds) throws UntoldStory {
        return new Timeline(
                        bench.study(),
                        bench.candidate(),
                        Moment.heldIn("cruise"),
                        longestStepSeconds)
                .tell(TIED, Pilot.NEVER);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.1, 0.01, 0.001, 0.0003})
    void aLoadThatStarvesForAMomentMeanwhileIsSeenAtAnyStep(double volts) throws UntoldStory {
        double lowest =
                Telling.trace(tied(sagging(6), 1), "bus").points().stream()
                        .mapToDouble(TracePoint::value)
                        .min()
                        .orElseThrow();
        List<Story> stories = new ArrayList<>();
        for (double longest : new double[] {Double.POSITIVE_INFINITY, 60, 7, 1}) {
            stories.add(tied(sagging(lowest + volts), longest));
        }
        double stops = Telling.when(stories.get(0), StoryEvent.Kind.LOAD_STOPS, "radio");
        double back = Telling.when(stories.get(0), StoryEvent.Kind.LOAD_RESTARTS, "radio");
        assertTrue(stops > 1 && back > stops + 1, stops + " " + back);
        for (Story story : stories) {
            assertEquals(
                    stops, Telling.when(story, StoryEvent.Kind.LOAD_STOPS, "radio"), 1e-6 * stops);
            assertEquals(
                    back, Telling.when(story, StoryEvent.Kind.LOAD_RESTARTS, "radio"), 1e-6 * back);
        }
    }
}

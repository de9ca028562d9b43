package stillturning.story.timeline;

import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.device.EventLog;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.watch.CrankingWatch;

/** Tries to start the engine of a run. */
record StartTrial(
        Plant plant, EngineDevice engine, Simulation simulation, Situation now, EventLog journal) {

    /**
     * Stands at rest, then turns the key. An attempt that cannot be told on counts as failed.
     *
     * @param conditions in words
     */
    StartAttempt start(String conditions) {
        CrankingWatch cranking = new CrankingWatch(plant.loads(), now);
        try {
            crank(cranking);
        } catch (UntoldStory e) {
            now.log(StoryEvent.Kind.UNTOLD, "engine", "cannot be told on: " + e.getMessage());
            return cranking.start(conditions, false, Repetitions.shortened(journal.happenings()));
        }
        return cranking.start(
                conditions, !engine.stopped(), Repetitions.shortened(journal.happenings()));
    }

    private void crank(CrankingWatch cranking) throws UntoldStory {
        engine.stand();
        simulation.comeToRest();
        now.seconds = 0;
        journal.startAnew();
        engine.mayStart();
        do {
            simulation.settle();
            cranking.look();
            if (now.cranking) {
                simulation.advance(Timeline.HORIZON_SECONDS);
                cranking.look();
            }
        } while (now.cranking);
    }

    /**
     * Has the engine stopped now, and waits until it runs again.
     *
     * @param failure in words
     * @param patienceSeconds how long one waits (s)
     */
    StartAttempt again(String failure, double patienceSeconds) throws UntoldStory {
        engine.halt();
        now.presses++;
        CrankingWatch cranking = new CrankingWatch(plant.loads(), now);
        double end = now.seconds + patienceSeconds;
        while (engine.stopped() && now.seconds < end) {
            simulation.settle();
            cranking.look();
            simulation.advance(end);
            simulation.settle();
            cranking.look();
        }
        return cranking.start(
                failure, !engine.stopped(), Repetitions.shortened(journal.happenings()));
    }
}

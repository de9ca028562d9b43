package stillturning.story.timeline;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Engine;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Propeller;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.device.EventLog;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.stride.StepLimits;
import stillturning.story.timeline.watch.CrankingWatch;
import stillturning.story.timeline.wiring.Layouts.Laid;

/** Tries to start the engine of a run. */
record StartTrial(
        Plant plant, EngineDevice engine, Simulation simulation, Situation now, EventLog journal) {

    /**
     * Starts the engine on the ground; nothing to tell where the study has no starter.
     *
     * @param hard with tired batteries in the cold, or as stated
     * @param hits failure modes that were there before
     */
    static Optional<StartAttempt> onTheGround(
            Study study, Candidate candidate, boolean hard, List<Hit> hits) {
        Engine.EngineStarting starting = study.aircraft().engine().starting();
        Optional<LoadNeed> starter = starting.starter().flatMap(study.aircraft()::load);
        Optional<Phase> phase =
                starter.flatMap(
                        s ->
                                study.aircraft().phases().stream()
                                        .filter(p -> s.use().phases().contains(p.name()))
                                        .findFirst());
        if (phase.isEmpty()) {
            return Optional.empty();
        }
        Moment moment =
                new Moment(
                        phase.get().name(),
                        FlightSpan.HELD,
                        hard ? Batteries.TIRED : Batteries.AS_STATED);
        Run run =
                new Run(
                        candidate.withoutProcedures(),
                        Laid.of(candidate.circuit(hits)),
                        new FlightConditions(
                                hard
                                        ? study.aircraft().at(starting.coldCelsius())
                                        : study.aircraft(),
                                phase.get(),
                                moment,
                                Setting.with(Pilot.PLANNED).with(Propeller.STANDS),
                                StepLimits.EXACT));
        String conditions =
                hard
                        ? String.format(
                                Locale.ROOT,
                                "batteries at %.0f %% of their charge, %.0f °C",
                                100 * starting.tiredCharge(),
                                starting.coldCelsius())
                        : "as stated";
        return Optional.of(run.start(conditions));
    }

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

package stillturning.reliability.combined;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.model.Candidate;
import stillturning.model.LoadNeed;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.reliability.combined.Conditions.Flight;
import stillturning.reliability.combined.SetTrial.Timelines;
import stillturning.reliability.cutset.CutSearch;
import stillturning.reliability.cutset.CutSets;
import stillturning.reliability.cutset.SetSearchWatch;
import stillturning.reliability.cutset.SetVerdict;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;
import stillturning.story.timeline.Timeline;

/** Finds what events do together in one candidate. */
public final class CombinedFailures {

    /** A current that is none (A). */
    private static final double NONE = 1e-6;

    private CombinedFailures() {}

    /**
     * Everything that can go wrong in a candidate: failure modes in its order, then what takes
     * several parts, then dead lamps, then switches left in a wrong position, alone and as one line
     * of a checklist moves them, then drills carried out needlessly, then a pilot who does nothing.
     *
     * @param causes what takes several parts at once
     */
    public static List<Event> events(Candidate candidate, List<Cause> causes) {
        List<Event> events = new ArrayList<>();
        for (Failure single : FailureCatalogue.singlesOf(candidate)) {
            events.add(new Event(Event.EventKind.FAILURE, single.name(), single));
        }
        for (Cause cause : causes) {
            events.add(
                    new Event(
                            Event.EventKind.CAUSE,
                            cause.name(),
                            cause.failure(),
                            Optional.of(cause)));
        }
        for (Failure dead : FailureCatalogue.deadLampsOf(candidate)) {
            events.add(new Event(Event.EventKind.DEAD_LAMP, dead.name(), dead));
        }
        for (Misplaced left : FailureCatalogue.omissionsOf(candidate)) {
            events.add(new Event(Event.EventKind.LEFT_SWITCH, left.name(), left.failure()));
        }
        events.addAll(drills(candidate));
        if (!candidate.cockpit().procedures().isEmpty()) {
            String name = "pilot does nothing";
            events.add(new Event(Event.EventKind.IDLE_PILOT, name, Failure.levers(name, Map.of())));
        }
        return List.copyOf(events);
    }

    private static List<Event> drills(Candidate candidate) {
        List<Event> drills = new ArrayList<>();
        for (Failure masterOff : FailureCatalogue.operatingCasesOf(candidate)) {
            drills.add(drill(masterOff.name(), masterOff.levers()));
        }
        for (Procedure procedure : candidate.cockpit().procedures()) {
            boolean byHand = procedure.execution().automatic().isEmpty();
            if (byHand && !procedure.moves().isEmpty()) {
                drills.add(drill(procedure.name() + " drill needlessly", procedure.moves()));
            }
        }
        return drills;
    }

    private static Event drill(String name, Map<String, String> moves) {
        return new Event(Event.EventKind.NEEDLESS_DRILL, name, Failure.drill(name, moves));
    }

    /**
     * The smallest sets of events that end the engine before the aircraft can land, all at the same
     * moment of the phase in which the study's failures happen. The result does not depend on the
     * number of threads.
     *
     * @param order largest sets asked about
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static CombinedResult of(
            Study study, Candidate candidate, List<Event> events, int order, SetSearchWatch watch)
            throws UntoldStory {
        SetTrial trial = trial(study, candidate, events);
        CutSets sets = CutSearch.of(events.size(), order, trial, watch);
        List<String> untold = sets.untold().stream().map(trial::why).toList();
        return new CombinedResult(candidate, events, sets, untold, trial.stories());
    }

    /**
     * The same for pairs alone of which one is among some events, and what ends the engine alone.
     *
     * @param some numbers of those of which one is in every pair that is asked about
     * @throws UntoldStory if the candidate has no steady state with nothing wrong
     */
    public static CombinedResult withOneOf(
            Study study, Candidate candidate, List<Event> events, Set<Integer> some)
            throws UntoldStory {
        SetTrial trial = trial(study, candidate, events);
        CutSets sets =
                CutSearch.of(
                        events.size(),
                        2,
                        set ->
                                set.length == 1 || IntStream.of(set).anyMatch(some::contains)
                                        ? trial.of(set)
                                        : SetVerdict.IMPOSSIBLE,
                        SetSearchWatch.NOBODY);
        List<String> untold = sets.untold().stream().map(trial::why).toList();
        return new CombinedResult(candidate, events, sets, untold, trial.stories());
    }

    /** Somebody who tells what sets of these events come to. */
    static SetTrial trial(Study study, Candidate candidate, List<Event> events) throws UntoldStory {
        Timeline timeline = Timeline.quick(study, candidate);
        if (!timeline.normal().engineRuns()) {
            throw timeline.neverRan();
        }
        return new SetTrial(
                new Timelines(timeline, timeline.exact()),
                candidate,
                study.landing(),
                new Conditions(
                        study.aircraft(),
                        candidate,
                        events,
                        new Flight(conducting(study, candidate), idle(study))));
    }

    private static Set<String> idle(Study study) {
        String phase = study.goals().failurePhase().name();
        return study.aircraft().loads().stream()
                .filter(load -> !load.use().phases().contains(phase))
                .map(LoadNeed::id)
                .collect(Collectors.toSet());
    }

    private static Set<String> conducting(Study study, Candidate candidate) throws UntoldStory {
        return new SteadyStates(study, candidate, study.goals().failurePhase())
                .rest().amps().entrySet().stream()
                        .filter(e -> Math.abs(e.getValue()) > NONE)
                        .map(Map.Entry::getKey)
                        .collect(Collectors.toSet());
    }
}

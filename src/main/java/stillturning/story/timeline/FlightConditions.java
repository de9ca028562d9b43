package stillturning.story.timeline;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Phase;
import stillturning.model.Study.Aircraft;
import stillturning.story.Moment;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Setting;
import stillturning.story.timeline.stride.StepLimits;

/**
 * What does not depend on the candidate.
 *
 * @param phase that of the moment
 * @param drill moves that the pilot makes from the first instant on, one after the other
 * @param dark cues whose lamp is dead
 * @param stride how charges and heats are carried
 */
record FlightConditions(
        Aircraft aircraft,
        Phase phase,
        Moment moment,
        Setting setting,
        Map<String, String> drill,
        Set<String> dark,
        StepLimits stride) {

    /** Where nobody carries out a drill and every lamp works. */
    FlightConditions(
            Aircraft aircraft, Phase phase, Moment moment, Setting setting, StepLimits stride) {
        this(aircraft, phase, moment, setting, Map.of(), Set.of(), stride);
    }

    /**
     * What is flown after the phase of the moment.
     *
     * @param lands whether the flight ends with the last of them; it is held without end otherwise
     */
    record Ahead(List<Phase> phases, boolean lands) {
        Ahead {
            phases = List.copyOf(phases);
        }
    }

    /**
     * Phases that are flown after that of the moment; empty if it goes on without end. How long an
     * engine that is off could run is asked of the first phase in which it runs.
     */
    Optional<Ahead> ahead() {
        List<Phase> phases = aircraft.phases();
        int first = phases.indexOf(phase) + 1;
        if (moment.span() == FlightSpan.FLOWN) {
            return Optional.of(new Ahead(phases.subList(first, phases.size()), true));
        }
        if (runs(phase)) {
            return Optional.empty();
        }
        int held = first;
        while (held < phases.size() && !runs(phases.get(held))) {
            held++;
        }
        boolean lands = held == phases.size();
        return Optional.of(new Ahead(phases.subList(first, lands ? held : held + 1), lands));
    }

    private boolean runs(Phase of) {
        return !of.engineOff() && !aircraft.isStarted(of);
    }
}

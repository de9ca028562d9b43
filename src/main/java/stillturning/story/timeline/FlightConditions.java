package stillturning.story.timeline;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Phase;
import stillturning.model.Study.Aircraft;
import stillturning.story.Moment;
import stillturning.story.Moment.Span;
import stillturning.story.Setting;
import stillturning.story.timeline.stride.StepLimits;

/**
 * What does not depend on the candidate.
 *
 * @param phase that of the moment
 * @param drill moves that the pilot makes from the first instant on, one after the other
 * @param stride how charges and heats are carried
 */
record FlightConditions(
        Aircraft aircraft,
        Phase phase,
        Moment moment,
        Setting setting,
        Map<String, String> drill,
        StepLimits stride) {

    /** Where nobody carries out a drill. */
    FlightConditions(
            Aircraft aircraft, Phase phase, Moment moment, Setting setting, StepLimits stride) {
        this(aircraft, phase, moment, setting, Map.of(), stride);
    }

    /** Phases that are flown after that of the moment; empty if it goes on without end. */
    Optional<List<Phase>> ahead() {
        if (moment.span() == Span.HELD) {
            return Optional.empty();
        }
        List<Phase> phases = aircraft.phases();
        return Optional.of(phases.subList(phases.indexOf(phase) + 1, phases.size()));
    }
}

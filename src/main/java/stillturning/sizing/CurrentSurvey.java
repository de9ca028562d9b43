package stillturning.sizing;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Alteration.Added;
import stillturning.parts.Part;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.curve.Tripping;
import stillturning.sizing.LowBatteries.Greedy;
import stillturning.sizing.result.Carried;
import stillturning.story.Setting.Race;
import stillturning.story.SteadyState;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;
import stillturning.story.timeline.SteadyStates.Course;

/**
 * Largest current of every element, over the phases of the flight and over single failures, from
 * the solved network. Every load that may run in a phase runs there at its full current.
 *
 * <p>Currents that a short drives count apart: a conductor is not sized for them, a protector has
 * to end them.
 */
final class CurrentSurvey {

    /** A short that draws less has been cut off, or never hurt anybody (A). */
    private static final double FAULT_AMPS = 1;

    /** What the engine tolerates is seconds, what a battery lasts is minutes (s). */
    private static final double AT_ONCE_SECONDS = 60;

    /** The worst for a wire: whatever opens, opens late. */
    private static final Race ALL_SLOW = new Race(Tripping.SLOW, Optional.empty());

    private final Map<String, Carried> normal = new HashMap<>();
    private final Map<String, Carried> worst = new HashMap<>();
    private final Map<String, Carried> faulty = new HashMap<>();
    private final Map<String, TooLate> tooLate = new HashMap<>();
    private final Map<String, TooLate> tooLateIfSlow = new HashMap<>();
    private final Map<String, List<StoryEvent>> chafes = new LinkedHashMap<>();
    private final Map<String, Greedy> greedy = new LinkedHashMap<>();
    private final List<String> untold = new ArrayList<>();
    private final Map<String, SteadyState> rests = new LinkedHashMap<>();
    private final Map<String, SteadyState> averages = new LinkedHashMap<>();
    private final Candidate candidate;
    private final SizingPhases phases;

    private CurrentSurvey(Candidate candidate, SizingPhases phases) {
        this.candidate = candidate;
        this.phases = phases;
    }

    /**
     * Looks at every phase and every single failure.
     *
     * @param progress told the name of each phase before it is looked at
     * @throws UntoldStory if the candidate has no steady state in some phase
     */
    static CurrentSurvey of(
            Study study, Candidate candidate, SurveyDepth reach, Consumer<String> progress)
            throws UntoldStory {
        SizingPhases phases = new SizingPhases(study, candidate);
        CurrentSurvey survey = new CurrentSurvey(candidate, phases);
        Study full = Draws.full(study);
        for (Phase phase : study.aircraft().phases()) {
            progress.accept(phase.name());
            SteadyStates flows = new SteadyStates(full, candidate, phase);
            survey.rests.put(phase.name(), flows.rest());
            survey.averages.put(phase.name(), new SteadyStates(study, candidate, phase).rest());
            survey.undisturbed(flows.rest(), phase);
            if (!phases.starting(phase)) {
                LowBatteries.of(full, candidate, phase)
                        .forEach(g -> survey.greedy.merge(g.battery(), g, Greedy::orMore));
            }
            if (reach == SurveyDepth.SINGLE_FAILURES) {
                boolean remembered = phase.equals(study.goals().failurePhase());
                survey.failures(flows, phase, phases.starting(phase), remembered);
            }
        }
        return survey;
    }

    private void undisturbed(SteadyState flow, Phase phase) {
        flow.amps()
                .forEach(
                        (element, amps) -> {
                            Carried carried = new Carried(Math.abs(amps), phase.name(), "");
                            normal.merge(element, carried, Carried::orMore);
                            worst.merge(element, carried, Carried::orMore);
                        });
    }

    /**
     * A short that made a wire too hot although something opened after it.
     *
     * @param carried current at first
     * @param opened protectors that opened
     */
    record TooLate(Carried carried, List<String> opened) {
        private static final TooLate NEVER = new TooLate(Carried.NOTHING, List.of());

        private static TooLate worse(TooLate one, TooLate other) {
            return other.carried.amps() > one.carried.amps() ? other : one;
        }
    }

    /**
     * @param slow what happens with every protector at the slow edge of its band, where a wire
     *     might then be too hot before one opens
     */
    private record Told(Failure failure, Optional<Course> course, Optional<Course> slow) {}

    /** Told in parallel, taken in order. */
    private void failures(SteadyStates flows, Phase phase, boolean starting, boolean remembered) {
        List<Told> told =
                FailureCatalogue.singlesOf(candidate).parallelStream()
                        .filter(f -> !starting || shorts(f).findAny().isPresent())
                        .map(f -> told(flows, f))
                        .toList();
        for (Told one : told) {
            String name = one.failure.name();
            if (one.course.isEmpty()) {
                untold.add(phase.name() + ": " + name);
                continue;
            }
            look(one.failure, one.course.get().steady(), phase, starting);
            opened(one.failure, one.course.get(), phase);
            tooLate(one.failure, one.course.get(), phase)
                    .forEach(
                            (wire, late) -> {
                                tooLate.merge(wire, late, TooLate::worse);
                                faulty.merge(wire + "/wire", late.carried, Carried::orMore);
                            });
            one.slow.ifPresent(
                    slow ->
                            tooLate(one.failure, slow, phase)
                                    .forEach((w, l) -> tooLateIfSlow.merge(w, l, TooLate::worse)));
            if (remembered) {
                chafes.put(name, one.course.get().happenings());
            }
        }
    }

    /** What opens some time after a failure has carried more than it bears, and is never steady. */
    private void opened(Failure failure, Course course, Phase phase) {
        if (shorts(failure).findAny().isPresent()) {
            return;
        }
        for (StoryEvent happening : course.happenings()) {
            if (happening.kind() == StoryEvent.Kind.PROTECTOR_OPENS) {
                String part = happening.part();
                for (Element element : candidate.part(part).map(Part::elements).orElse(List.of())) {
                    double amps = Math.abs(course.first().amps(part, element.name()));
                    worst.merge(
                            part + "/" + element.name(),
                            new Carried(amps, phase.name(), failure.name()),
                            Carried::orMore);
                }
            }
        }
    }

    private Told told(SteadyStates flows, Failure failure) {
        try {
            Course course = flows.course(failure, Race.TYPICAL);
            boolean close =
                    shorts(failure).findAny().isPresent()
                            && course.contests().stream()
                                    .flatMap(c -> c.rivals().stream())
                                    .anyMatch(rival -> candidate.wire(rival).isPresent());
            return new Told(
                    failure,
                    Optional.of(course),
                    close ? Optional.of(flows.course(failure, ALL_SLOW)) : Optional.empty());
        } catch (UntoldStory e) {
            return new Told(failure, Optional.empty(), Optional.empty());
        }
    }

    /** Wires that a short makes too hot before something ends it, with its current at first. */
    private Map<String, TooLate> tooLate(Failure failure, Course course, Phase phase) {
        Map<String, TooLate> late = new LinkedHashMap<>();
        if (shorts(failure).findAny().isEmpty()) {
            return late;
        }
        List<String> opened =
                course.happenings().stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.PROTECTOR_OPENS)
                        .map(StoryEvent::part)
                        .toList();
        for (StoryEvent happening : course.happenings()) {
            if (happening.kind() == StoryEvent.Kind.WIRE_OVERHEATS) {
                String part = happening.part();
                double amps =
                        Math.max(
                                Math.abs(course.first().amps(part, "wire")),
                                Math.abs(course.first().amps(part, "far end")));
                late.put(
                        part, new TooLate(new Carried(amps, phase.name(), failure.name()), opened));
            }
        }
        return late;
    }

    private void look(Failure failure, List<SteadyState> flows, Phase phase, boolean starting) {
        for (int i = 0; i < flows.size(); i++) {
            look(failure, flows.get(i), phase, !starting, i == flows.size() - 1);
        }
    }

    /**
     * While the engine is started, seconds long, only shorts count. What flows beside a short
     * counts only where it lasts: until a protector ends the short a low voltage has loads draw
     * more, for an instant.
     */
    private void look(
            Failure failure, SteadyState flow, Phase phase, boolean counts, boolean lasts) {
        Set<String> shorting =
                shorts(failure)
                        .filter(name -> Math.abs(flow.amps().getOrDefault(name, 0.0)) > FAULT_AMPS)
                        .collect(Collectors.toSet());
        Set<String> faults =
                shorting.isEmpty()
                        ? Set.of()
                        : ShortPath.of(candidate.circuit(failure.hits()), flow, shorting);
        boolean beside = counts && (lasts || shorting.isEmpty());
        flow.amps()
                .forEach(
                        (element, amps) -> {
                            Carried carried =
                                    new Carried(Math.abs(amps), phase.name(), failure.name());
                            if (faults.contains(element)) {
                                faulty.merge(element, carried, Carried::orMore);
                            } else if (beside) {
                                worst.merge(element, carried, Carried::orMore);
                            }
                        });
    }

    /** Names of the metal that a failure adds between things that should not touch. */
    private Stream<String> shorts(Failure failure) {
        return failure.hits().stream()
                .flatMap(
                        hit ->
                                hit.mode().alterations().stream()
                                        .filter(Added.class::isInstance)
                                        .map(a -> ((Added) a).element())
                                        .filter(e -> isShort(hit.part(), e))
                                        .map(e -> hit.part() + "/" + e.name()));
    }

    /** A half of a chafed wire is no short: one of its ends is the chafe. */
    private boolean isShort(String part, Element element) {
        List<String> terminals =
                candidate.part(part).map(Part::terminals).orElse(List.<String>of());
        return element instanceof Conductor
                && (element.to().equals(Element.STRUCTURE)
                        || (terminals.contains(element.from())
                                && terminals.contains(element.to())));
    }

    /** The phases that were looked at. */
    SizingPhases phases() {
        return phases;
    }

    /** What flows in a phase with nothing wrong, loads that run now and then at their average. */
    SteadyState average(Phase phase) {
        return requireNonNull(averages.get(phase.name()), phase.name());
    }

    /** Batteries that take in too much where they come nearly empty, each in its worst phase. */
    Collection<Greedy> greedy() {
        return greedy.values();
    }

    /** What flows in a phase with nothing wrong, every load that may run running. */
    SteadyState rest(Phase phase) {
        return requireNonNull(rests.get(phase.name()), phase.name());
    }

    /** Largest current with nothing wrong. */
    Carried normal(String part, String element) {
        return normal.getOrDefault(part + "/" + element, Carried.NOTHING);
    }

    /** Largest current with at most one failure, shorts apart. */
    Carried worst(String part, String element) {
        return worst.getOrDefault(part + "/" + element, Carried.NOTHING);
    }

    /**
     * Largest current that a short drives through a wire until it is too hot, or without end; where
     * it is chafed itself, in the half that carries more.
     */
    Carried shorted(String wire) {
        return faulty.getOrDefault(wire + "/wire", Carried.NOTHING)
                .orMore(faulty.getOrDefault(wire + "/far end", Carried.NOTHING));
    }

    /** The worst short that made a wire too hot before something opened; none of no current. */
    TooLate tooLate(String wire) {
        return tooLate.getOrDefault(wire, TooLate.NEVER);
    }

    /** The same with every protector as slow as its class allows. */
    TooLate tooLateIfSlow(String wire) {
        return tooLateIfSlow.getOrDefault(wire, TooLate.NEVER);
    }

    /** What happens when this fails in the phase in which the study lets things fail. */
    List<StoryEvent> happenings(String failure) {
        return chafes.getOrDefault(failure, List.of());
    }

    /**
     * Whether the engine stops at once when this fails in that phase, and not because a battery
     * runs down; not if nothing is known of the failure.
     */
    boolean stopsEngine(String failure) {
        return happenings(failure).stream()
                .anyMatch(
                        h ->
                                h.kind() == StoryEvent.Kind.ENGINE_STOPS
                                        && h.seconds() < AT_ONCE_SECONDS);
    }

    /** Failures, with their phases, that could not be computed. */
    List<String> untold() {
        return untold;
    }
}

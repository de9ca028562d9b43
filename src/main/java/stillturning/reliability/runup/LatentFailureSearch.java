package stillturning.reliability.runup;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.reliability.combined.Event;
import stillturning.story.Endurance;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.MotorStart;
import stillturning.story.Pilot;
import stillturning.story.PilotView;
import stillturning.story.PilotView.EngineSound;
import stillturning.story.Setting;
import stillturning.story.StartAttempt;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Finds the failures of which a pilot sees nothing, from turning the key to the landing. */
final class LatentFailureSearch {

    private final Study study;
    private final Candidate candidate;
    private final Set<String> noticed;
    private final Timeline flight;
    private final PilotView usual;
    private final boolean starts;

    LatentFailureSearch(Study study, Candidate candidate) throws UntoldStory {
        this.study = study;
        this.candidate = candidate;
        this.noticed = Set.copyOf(study.aircraft().noticed());
        this.flight =
                new Timeline(
                        study,
                        candidate,
                        new Moment(firstFlown().name(), FlightSpan.FLOWN, Batteries.AS_STATED));
        Failure nothing = new Failure("nothing", List.of(), Map.of());
        this.usual =
                sight(nothing)
                        .orElse(new PilotView(Set.of(), Set.of(), Set.of(), EngineSound.STOPS));
        this.starts = starts(nothing);
    }

    /**
     * Numbers of the single failures and dead lamps that nobody sees, in rising order. What cannot
     * be told counts as the end of the engine, which is seen.
     */
    List<Integer> among(List<Event> events) {
        return IntStream.range(0, events.size())
                .filter(i -> canHide(events.get(i).kind()))
                .parallel()
                .filter(i -> unseen(events.get(i).failure()))
                .boxed()
                .toList();
    }

    static boolean canHide(Event.EventKind kind) {
        return kind == Event.EventKind.FAILURE || kind == Event.EventKind.DEAD_LAMP;
    }

    boolean unseen(Failure failure) {
        return sight(failure).filter(usual::equals).isPresent() && starts(failure) == starts;
    }

    /** What there is to see until the landing; nothing to compare where it is not reached. */
    private Optional<PilotView> sight(Failure failure) {
        // what shows only if a motor starts at its worst moment does not show
        Setting nobody = Setting.with(Pilot.NEVER).with(new MotorStart.Never());
        Story story = flight.tellAsFar(failure, nobody);
        if (!(story.engine().endurance() instanceof Endurance.Landed)) {
            return Optional.empty();
        }
        Set<String> cues = new HashSet<>();
        Set<String> stopped = new HashSet<>();
        Set<String> onTheirOwn = new HashSet<>();
        for (StoryEvent happening : story.happenings()) {
            if (happening.kind() == Kind.CUE) {
                cues.add(happening.part());
            } else if (happening.kind() == Kind.LOAD_STOPS && noticed.contains(happening.part())) {
                stopped.add(happening.part());
            } else if (happening.kind() == Kind.LOAD_ON_ITS_OWN
                    && noticed.contains(happening.part())) {
                onTheirOwn.add(happening.part());
            }
        }
        for (String load : noticed) {
            if (flight.normal().working().contains(load)
                    && !story.aftermath().working().contains(load)) {
                stopped.add(load);
            }
        }
        boolean stops = !story.of(Kind.ENGINE_STOPS).isEmpty();
        boolean falters = story.engine().longestInterruptionSeconds() > PilotView.NOTICED_SECONDS;
        return Optional.of(
                new PilotView(
                        cues,
                        stopped,
                        onTheirOwn,
                        stops
                                ? EngineSound.STOPS
                                : falters ? EngineSound.FALTERS : EngineSound.RUNS));
    }

    private boolean starts(Failure failure) {
        return Timeline.start(study, candidate, false, failure.hits())
                .map(StartAttempt::runs)
                .orElse(true);
    }

    private Phase firstFlown() {
        return study.aircraft().phases().stream()
                .filter(phase -> !study.aircraft().isStarted(phase))
                .findFirst()
                .orElse(study.goals().failurePhase());
    }
}

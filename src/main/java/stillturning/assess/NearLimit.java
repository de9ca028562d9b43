package stillturning.assess;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Phase;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.parts.element.curve.Tripping;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Race;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * A flight with nothing wrong in which a protector opens, by nothing but the current of its loads.
 *
 * @param flight from the first phase in which the engine runs, to the end
 * @param early whether it opens only if it does so as soon as its class allows
 */
public record NearLimit(Story flight, boolean early) {

    private static final Failure NOTHING = Failure.levers("nothing fails", Map.of());

    private static final Race AS_SOON_AS_ALLOWED = new Race(Tripping.FAST, Optional.empty());

    /**
     * The whole flight, played with typical protectors and with quick ones; empty if none opens.
     */
    static Optional<NearLimit> of(Study study, Candidate candidate) {
        Optional<Phase> first =
                study.aircraft().phases().stream()
                        .filter(p -> !study.aircraft().isStarted(p))
                        .findFirst();
        if (first.isEmpty()) {
            return Optional.empty();
        }
        Moment moment = new Moment(first.get().name(), FlightSpan.FLOWN, Batteries.AS_STATED);
        try {
            return of(Timeline.quick(study, candidate, moment));
        } catch (UntoldStory e) {
            // a phase without a steady state is told of where its failures are
            return Optional.empty();
        }
    }

    private static Optional<NearLimit> of(Timeline timeline) {
        Setting typical = Setting.with(Pilot.NEVER);
        Story quick = timeline.tellAsFar(NOTHING, typical.with(AS_SOON_AS_ALLOWED));
        if (opened(quick).isEmpty()) {
            return Optional.empty();
        }
        Story usual = timeline.tellAsFar(NOTHING, typical);
        return Optional.of(
                opened(usual).isEmpty() ? new NearLimit(quick, true) : new NearLimit(usual, false));
    }

    private static List<StoryEvent> opened(Story story) {
        return story.of(StoryEvent.Kind.PROTECTOR_OPENS);
    }

    /** The protector that opens first. */
    public String protector() {
        return opened(flight).get(0).part();
    }
}

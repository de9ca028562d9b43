package stillturning.story.timeline.watch;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.failure.Failure;
import stillturning.story.FirstSign;
import stillturning.story.FirstSign.From;
import stillturning.story.PilotView;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.SupplyDevice;

/** Finds the first that the pilot can notice of a failure. */
public final class SignWatch {

    private final Map<String, SupplyDevice> loads;
    private final Situation now;
    private Set<String> workedBefore = Set.of();
    private Optional<FirstSign> atOnce = Optional.empty();

    public SignWatch(Map<String, SupplyDevice> loads, Situation now) {
        this.loads = loads;
        this.now = now;
    }

    /** What works before anything is wrong. */
    public void before(Set<String> working) {
        workedBefore = working;
    }

    /** What shows at the instant of the failure without being an event of its own. */
    public void begin(Failure failure) {
        if (failure.isOwnAct()) {
            atOnce = Optional.of(new FirstSign(now.seconds, From.OWN_ACT, failure.name()));
            return;
        }
        atOnce =
                now.aircraft.noticed().stream()
                        .filter(workedBefore::contains)
                        .filter(load -> !loads.containsKey(load))
                        .findFirst()
                        .map(load -> stopped(load, now.seconds));
    }

    /** The first of all, if there is one until now. */
    public Optional<FirstSign> first() {
        List<StoryEvent> told = now.journal.happenings();
        for (int i = 0; i < told.size() && atOnce.isEmpty(); i++) {
            Optional<FirstSign> sign = sign(told, i);
            if (sign.isPresent()) {
                return sign;
            }
        }
        return atOnce;
    }

    private Optional<FirstSign> sign(List<StoryEvent> told, int at) {
        StoryEvent event = told.get(at);
        if (event.kind() == Kind.CUE) {
            return Optional.of(new FirstSign(event.seconds(), From.CUE, event.part()));
        }
        if ((event.kind() == Kind.LOAD_STOPS || event.kind() == Kind.LOAD_DESTROYED)
                && now.aircraft.noticed().contains(event.part())) {
            return Optional.of(stopped(event.part(), event.seconds()));
        }
        if (event.kind() == Kind.LOAD_ON_ITS_OWN && now.aircraft.noticed().contains(event.part())) {
            return Optional.of(
                    new FirstSign(
                            event.seconds(),
                            From.LOAD,
                            event.part() + " goes over to its own battery"));
        }
        if (event.kind() == Kind.ENGINE_INTERRUPTED) {
            double heard = event.seconds() + PilotView.NOTICED_SECONDS;
            boolean lasts =
                    told.stream()
                            .skip(at)
                            .filter(later -> later.kind() == Kind.ENGINE_RECOVERS)
                            .findFirst()
                            .map(later -> later.seconds() > heard)
                            .orElse(true);
            return lasts
                    ? Optional.of(new FirstSign(heard, From.ENGINE, "the engine falters"))
                    : Optional.empty();
        }
        if (event.kind() == Kind.PILOT) {
            return Optional.of(new FirstSign(event.seconds(), From.OWN_ACT, event.words()));
        }
        return event.kind() == Kind.ENGINE_STOPS
                ? Optional.of(new FirstSign(event.seconds(), From.ENGINE, "the engine stops"))
                : Optional.empty();
    }

    private static FirstSign stopped(String load, double seconds) {
        return new FirstSign(seconds, From.LOAD, load + " stops");
    }
}

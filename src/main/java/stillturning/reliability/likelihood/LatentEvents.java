package stillturning.reliability.likelihood;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.reliability.combined.CombinedResult;
import stillturning.reliability.combined.Event;
import stillturning.reliability.runup.Card;
import stillturning.reliability.runup.Latent;

/**
 * Which events nobody notices in flight, and which of those the run-up reveals. A common cause goes
 * unnoticed if all that it brings would by itself, and it does not end the engine.
 */
final class LatentEvents {

    private final Set<Integer> latent = new HashSet<>();
    private final Set<Integer> revealed = new HashSet<>();

    LatentEvents(CombinedResult joint, Singles singles, Card card) {
        List<List<Integer>> alone = joint.sets().ofOrder(1);
        card.latents().stream().map(Latent::event).forEach(latent::add);
        card.checks().forEach(check -> check.reveals().forEach(seen -> revealed.add(seen.event())));
        card.unconfirmed().forEach(revealed::remove);
        for (int event = 0; event < joint.events().size(); event++) {
            if (joint.events().get(event).kind() == Event.EventKind.CAUSE
                    && !alone.contains(List.of(event))) {
                addCause(event, singles.within(joint.events().get(event)));
            }
        }
    }

    private void addCause(int cause, List<Integer> brings) {
        if (latent.containsAll(brings)) {
            latent.add(cause);
            if (brings.stream().anyMatch(revealed::contains)) {
                revealed.add(cause);
            }
        }
    }

    /**
     * Whether an event stays until an inspection finds it.
     *
     * @param checked whether the run-up card is gone through before every flight
     */
    boolean stays(int event, boolean checked) {
        return latent.contains(event) && !(checked && revealed.contains(event));
    }
}

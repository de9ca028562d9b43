package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * Sets of moves that were tried with nothing wrong.
 *
 * @param moves those that do no harm on the way there and back, each in such an order
 * @param refused those that would show something and are not offered
 */
record Tried(List<SeenMoves> moves, List<RefusedCheck> refused) {

    /** Sets that do harm in any order. */
    List<Map<String, String>> harmful() {
        return refused.stream()
                .filter(r -> r.why() instanceof RefusedCheck.NoOrder)
                .map(RefusedCheck::moves)
                .toList();
    }

    /** With others that were tried after them. */
    Tried and(Tried others) {
        List<SeenMoves> all = new ArrayList<>(moves);
        all.addAll(others.moves);
        List<RefusedCheck> no = new ArrayList<>(refused);
        no.addAll(others.refused);
        return new Tried(all, no);
    }
}

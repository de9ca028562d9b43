package stillturning.story;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Looks for the order in which moves do no harm. */
public final class MoveOrders {

    /** More moves than this are not tried in every order. */
    public static final int MOST = 6;

    /** More moves than this have more orders than anybody wants to see played whole. */
    private static final int MOST_AT_ONCE = 4;

    /** Plays moves in an order. */
    public interface Trial {
        /** How many of the moves had been made when harm came; empty if none did. */
        Optional<Integer> harmAfter(Map<String, String> order) throws UntoldStory;
    }

    private MoveOrders() {}

    /**
     * The first order that does no harm, as written before all others; what begins like an order
     * that did harm is not tried again. Empty if there is none, or if there are more than {@link
     * #MOST} moves and the written order does harm.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    public static Optional<Map<String, String>> first(Map<String, String> moves, Trial trial)
            throws UntoldStory {
        List<String> written = List.copyOf(moves.keySet());
        List<List<Integer>> bad = new ArrayList<>();
        for (Optional<List<Integer>> order = Optional.of(counted(written.size()));
                order.isPresent();
                order = next(order.get())) {
            List<Integer> tried = order.get();
            if (bad.stream().noneMatch(start -> tried.subList(0, start.size()).equals(start))) {
                Map<String, String> played = new LinkedHashMap<>();
                tried.forEach(i -> played.put(written.get(i), moves.get(written.get(i))));
                Optional<Integer> harm = trial.harmAfter(played);
                if (harm.isEmpty()) {
                    return Optional.of(played);
                }
                bad.add(tried.subList(0, harm.get()));
            }
            if (written.size() > MOST) {
                return Optional.empty();
            }
        }
        return Optional.empty();
    }

    /**
     * Every order, as written before all others; the written one alone where there are more than
     * {@link #MOST_AT_ONCE} moves.
     */
    public static List<Map<String, String>> all(Map<String, String> moves) {
        if (moves.size() > MOST_AT_ONCE) {
            return List.of(moves);
        }
        List<String> written = List.copyOf(moves.keySet());
        List<Map<String, String>> all = new ArrayList<>();
        for (Optional<List<Integer>> order = Optional.of(counted(written.size()));
                order.isPresent();
                order = next(order.get())) {
            Map<String, String> played = new LinkedHashMap<>();
            order.get().forEach(i -> played.put(written.get(i), moves.get(written.get(i))));
            all.add(played);
        }
        return all;
    }

    /** Every order but the written one. */
    public static List<Map<String, String>> others(Map<String, String> moves) {
        List<Map<String, String>> all = all(moves);
        return all.subList(1, all.size());
    }

    private static List<Integer> counted(int size) {
        List<Integer> all = new ArrayList<>();
        for (int i = 0; i < size; i++) {
            all.add(i);
        }
        return all;
    }

    /** The order that follows in a list of all of them. */
    static Optional<List<Integer>> next(List<Integer> order) {
        List<Integer> next = new ArrayList<>(order);
        int turn = next.size() - 2;
        while (turn >= 0 && next.get(turn) > next.get(turn + 1)) {
            turn--;
        }
        if (turn < 0) {
            return Optional.empty();
        }
        int with = next.size() - 1;
        while (next.get(with) < next.get(turn)) {
            with--;
        }
        int held = next.get(turn);
        next.set(turn, next.get(with));
        next.set(with, held);
        Collections.reverse(next.subList(turn + 1, next.size()));
        return Optional.of(next);
    }
}

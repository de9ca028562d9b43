package stillturning.assess.front;

import java.util.ArrayList;
import java.util.List;

/** Things that nothing outdoes, while they are found. */
final class Front<T> {

    /** Something on the front. */
    record FrontMember<T>(T thing, List<Double> values) {}

    private final List<FrontMember<T>> placed = new ArrayList<>();

    /** Puts a thing on the front, unless one there is as good in everything. */
    boolean add(T thing, List<Double> values) {
        if (isReached(values)) {
            return false;
        }
        placed.removeIf(old -> asGood(values, old.values));
        placed.add(new FrontMember<>(thing, values));
        return true;
    }

    /** Whether something on the front is at least as good in everything. */
    boolean isReached(List<Double> values) {
        return placed.stream().anyMatch(p -> asGood(p.values, values));
    }

    List<FrontMember<T>> all() {
        return List.copyOf(placed);
    }

    /** Whether one is as good as another in everything; less is better. */
    static boolean asGood(List<Double> one, List<Double> other) {
        for (int i = 0; i < one.size(); i++) {
            if (!(one.get(i) <= other.get(i))) {
                return false;
            }
        }
        return true;
    }
}

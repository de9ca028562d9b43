package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Terminal;

/** Things that are tied to each other, directly or by others. */
final class Nets<T> {

    private final Map<T, T> above = new LinkedHashMap<>();

    /** Terminals that are joined in a candidate. */
    static Nets<Terminal> of(Candidate candidate) {
        Nets<Terminal> nets = new Nets<>();
        for (Join join : candidate.joins()) {
            nets.tie(join.one(), join.other());
        }
        return nets;
    }

    /** Puts a thing among them, tied to nothing yet. */
    void add(T one) {
        above.putIfAbsent(one, one);
    }

    void tie(T one, T other) {
        add(one);
        add(other);
        above.put(root(one), root(other));
    }

    void tieAll(Collection<? extends T> all) {
        all.forEach(this::add);
        all.stream().findFirst().ifPresent(first -> all.forEach(one -> tie(first, one)));
    }

    T root(T one) {
        T at = one;
        T next = above.getOrDefault(at, at);
        while (!next.equals(at)) {
            at = next;
            next = above.getOrDefault(at, at);
        }
        return at;
    }

    /** All sets of things that are tied, in the order in which they came in. */
    List<List<T>> all() {
        Map<T, List<T>> byRoot = new LinkedHashMap<>();
        above.keySet().forEach(t -> byRoot.computeIfAbsent(root(t), r -> new ArrayList<>()).add(t));
        return List.copyOf(byRoot.values());
    }
}

package stillturning.assess.front;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillturning.assess.front.Lanes.Pick;
import stillturning.assess.front.Space.FirstLook;

/**
 * Searches a space for what nothing outdoes.
 *
 * @param <C> what is looked at
 */
public final class FrontSearch<C> {

    /** Steps taken at once. Fixed, so that what is found does not hang on the number of threads. */
    private static final int ROUND = 16;

    private final Space<C> space;
    private final SearchLimits limits;
    private final SearchWatch watch;
    private final Lanes<C> lanes;
    private final Front<Node<C>> front = new Front<>();
    private final Map<Object, Node<C>> known = new HashMap<>();
    private final List<Node<C>> all = new ArrayList<>();
    private final Map<String, Integer> missed = new TreeMap<>();
    private int tried;
    private int met;
    private int outdone;
    private int twice;
    private int refused;

    private FrontSearch(Space<C> space, SearchLimits limits, SearchWatch watch) {
        this.space = space;
        this.limits = limits;
        this.watch = watch;
        this.lanes = new Lanes<>(space, limits.steps());
    }

    /** Searches until everything was looked at, a limit is reached, or the watch has enough. */
    public static <C> Found<C> in(Space<C> space, SearchLimits limits, SearchWatch watch) {
        return new FrontSearch<>(space, limits, watch).found();
    }

    /** A thing reached, and its form. */
    private record Made<C>(Pick<C> by, C thing, Object form) {}

    private Found<C> found() {
        List<Node<C>> starts = starts();
        look(starts);
        boolean whole = false;
        while (!whole && tried < limits.trials() && !watch.enough()) {
            List<Pick<C>> picks =
                    lanes.round(
                            Math.min(ROUND, limits.trials() - tried),
                            front.all().stream().map(Front.FrontMember::thing).toList());
            whole = picks.isEmpty();
            look(fresh(picks));
            watch.seen(tally(), values());
        }
        return new Found<>(
                front.all().stream()
                        .sorted(
                                Comparator.comparing(
                                        Front.FrontMember::values, FrontSearch::compare))
                        .map(placed -> placed.thing().member())
                        .toList(),
                starts.stream().map(Node::member).toList(),
                tally(),
                whole);
    }

    private List<List<Double>> values() {
        return front.all().stream().map(Front.FrontMember::values).toList();
    }

    private static int compare(List<Double> one, List<Double> other) {
        int order = 0;
        for (int i = 0; i < one.size() && order == 0; i++) {
            order = Double.compare(one.get(i), other.get(i));
        }
        return order;
    }

    private List<Node<C>> starts() {
        List<Node<C>> starts = new ArrayList<>();
        for (C start : space.starts()) {
            Node<C> node = Node.start(all.size(), start);
            all.add(node);
            starts.add(node);
            known.putIfAbsent(space.form(start), node);
        }
        return starts;
    }

    /** What the steps lead to and was not there yet, in their order. */
    private List<Node<C>> fresh(List<Pick<C>> picks) {
        List<Optional<Made<C>>> made = picks.parallelStream().map(this::made).toList();
        List<Node<C>> fresh = new ArrayList<>();
        for (Optional<Made<C>> one : made) {
            if (one.isEmpty()) {
                refused++;
            } else {
                put(one.get(), fresh);
            }
        }
        return fresh;
    }

    private Optional<Made<C>> made(Pick<C> pick) {
        return pick.step().taken().map(thing -> new Made<>(pick, thing, space.form(thing)));
    }

    private void put(Made<C> made, List<Node<C>> fresh) {
        Node<C> from = made.by.from();
        String words = made.by.step().words();
        Node<C> there = known.get(made.form);
        if (there == null) {
            Node<C> node = Node.after(all.size(), made.thing, from, words);
            all.add(node);
            known.put(made.form, node);
            fresh.add(node);
        } else {
            twice++;
            if (from.steps() + 1 < there.steps()) {
                there.reachedFrom(from, words).forEach(node -> reopen(node, fresh));
            } else {
                there.alsoFrom(from, words);
            }
        }
    }

    /** What is in this round is opened once it was tried. */
    private void reopen(Node<C> node, List<Node<C>> fresh) {
        if (!fresh.contains(node)) {
            lanes.open(node);
        }
    }

    private void look(List<Node<C>> nodes) {
        List<TrialResult> trials = nodes.parallelStream().map(this::trial).toList();
        for (int i = 0; i < nodes.size(); i++) {
            Node<C> node = nodes.get(i);
            node.tried(trials.get(i));
            count(node);
            lanes.open(node);
        }
    }

    private TrialResult trial(Node<C> node) {
        Optional<TrialResult> kept = watch.known(node.way());
        if (kept.isPresent()) {
            return kept.get();
        }
        FirstLook look = space.look(node.thing(), node.evidence());
        return node.steps() > 0 && front.isReached(look.atBest())
                ? new TrialResult.Outdone(node.evidence())
                : look.trial();
    }

    private void count(Node<C> node) {
        TrialResult trial = node.trial();
        watch.done(node.way(), trial);
        if (!trial.tried()) {
            outdone++;
            return;
        }
        tried++;
        trial.misses().ifPresent(by -> missed.merge(by, 1, Integer::sum));
        if (trial.worth().isPresent()) {
            met++;
            front.add(node, trial.worth().get());
        }
    }

    private Tally tally() {
        return new Tally(
                tried,
                met,
                missed,
                outdone,
                twice,
                refused,
                all.stream().mapToInt(Node::left).sum());
    }
}

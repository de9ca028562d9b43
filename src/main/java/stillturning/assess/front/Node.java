package stillturning.assess.front;

import static java.util.Objects.requireNonNull;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import stillturning.assess.front.Space.Step;
import stillturning.assess.front.Space.StepEffect;

/** A thing that was reached, and the steps from it that are left. */
final class Node<C> {

    /** Something made from it, and by which step. */
    private record Made<C>(Node<C> node, String words) {}

    private final int number;
    private final C thing;
    private final String way;
    private final List<Made<C>> made = new ArrayList<>();
    private final Map<StepEffect, Deque<Step<C>>> left = new EnumMap<>(StepEffect.class);
    private @Nullable Node<C> from;
    private String words;
    private int steps;
    private int taken;
    private boolean opened;
    private @Nullable TrialResult trial;

    private Node(int number, C thing, String way, String words) {
        this.number = number;
        this.thing = thing;
        this.way = way;
        this.words = words;
    }

    static <C> Node<C> start(int number, C thing) {
        return new Node<>(number, thing, String.valueOf(number), "");
    }

    static <C> Node<C> after(int number, C thing, Node<C> from, String words) {
        Node<C> node = new Node<>(number, thing, from.way + " > " + words, words);
        node.from = from;
        node.steps = from.steps + 1;
        from.made.add(new Made<>(node, words));
        return node;
    }

    int number() {
        return number;
    }

    C thing() {
        return thing;
    }

    /** How it was first reached; never changes. */
    String way() {
        return way;
    }

    int steps() {
        return steps;
    }

    /** How many steps from it were taken. */
    int taken() {
        return taken;
    }

    TrialResult trial() {
        return requireNonNull(trial, way);
    }

    void tried(TrialResult result) {
        trial = result;
    }

    /** What decided of what it was made from. */
    List<String> evidence() {
        return from == null ? List.of() : from.trial().evidence();
    }

    /** Reached again by as many steps or more. */
    void alsoFrom(Node<C> other, String by) {
        other.made.add(new Made<>(this, by));
    }

    /**
     * Reached again by fewer steps, which shortens the way to all that was made from it.
     *
     * @return all to which the way is shorter now
     */
    List<Node<C>> reachedFrom(Node<C> other, String by) {
        other.made.add(new Made<>(this, by));
        List<Node<C>> shorter = new ArrayList<>();
        shorten(other, by, shorter);
        return shorter;
    }

    private void shorten(Node<C> other, String by, List<Node<C>> shorter) {
        from = other;
        words = by;
        steps = other.steps + 1;
        shorter.add(this);
        for (Made<C> next : made) {
            if (steps + 1 < next.node.steps) {
                next.node.shorten(this, next.words, shorter);
            }
        }
    }

    /** The next step left of one of these turns. */
    Optional<Step<C>> take(Space<C> space, List<StepEffect> turns) {
        open(space);
        for (StepEffect turn : turns) {
            Deque<Step<C>> of = left.get(turn);
            if (of != null && !of.isEmpty()) {
                taken++;
                return Optional.of(of.removeFirst());
            }
        }
        return Optional.empty();
    }

    private void open(Space<C> space) {
        if (!opened) {
            opened = true;
            for (Step<C> step : space.steps(thing)) {
                left.computeIfAbsent(step.turn(), t -> new ArrayDeque<>()).addLast(step);
            }
        }
    }

    /** How many steps from it are known and not taken. */
    int left() {
        return left.values().stream().mapToInt(Deque::size).sum();
    }

    /** As one reads it: from the start to here. */
    Found.Member<C> member() {
        List<String> all = new ArrayList<>();
        Node<C> at = this;
        Node<C> before = from;
        while (before != null) {
            all.add(at.words);
            at = before;
            before = at.from;
        }
        Collections.reverse(all);
        return new Found.Member<>(thing, at.number, all, trial());
    }
}

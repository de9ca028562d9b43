package stillturning.assess.front;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.function.ToDoubleFunction;
import stillturning.assess.front.Space.Step;
import stillturning.assess.front.Space.StepEffect;

/**
 * In which order steps are taken: some from what is on the front, towards less before towards more;
 * some from what misses least, towards more; the rest in the order in which things were reached, so
 * that every step has its turn.
 */
final class Lanes<C> {

    /** A step and from where it is taken. */
    record Pick<C>(Node<C> from, Step<C> step) {}

    private static final List<StepEffect> LESS = List.of(StepEffect.LESS);
    private static final List<StepEffect> CHANGED = List.of(StepEffect.OTHER, StepEffect.MORE);
    private static final List<StepEffect> MENDING =
            List.of(StepEffect.MORE, StepEffect.OTHER, StepEffect.LESS);
    private static final List<StepEffect> ANY = List.of(StepEffect.values());

    /** Steps of a round for each lane, the last one having the rest. */
    private static final int LESS_QUOTA = 6;

    private static final int CHANGED_QUOTA = 3;
    private static final int MENDING_QUOTA = 4;

    /** So many steps tried in vain count like one thing more that is missed. */
    private static final double VAIN = 16;

    private final Space<C> space;
    private final int limit;
    private final Queue<Waiting<C>> missing = new PriorityQueue<>(Lanes::compare);
    private final Queue<Waiting<C>> others = new PriorityQueue<>(Lanes::compare);

    /** What waits, and where it stood in the order when it was put there. */
    private record Waiting<C>(Node<C> node, double order) {}

    private static <C> int compare(Waiting<C> one, Waiting<C> other) {
        int order = Double.compare(one.order, other.order);
        return order != 0 ? order : Integer.compare(one.node.number(), other.node.number());
    }

    Lanes(Space<C> space, int limit) {
        this.space = space;
        this.limit = limit;
    }

    /** Something new was tried, or may go on farther than before. */
    void open(Node<C> node) {
        wait(others, node, Node::steps);
        if (node.trial().misses().isPresent()) {
            wait(missing, node, Lanes::effort);
        }
    }

    private void wait(Queue<Waiting<C>> queue, Node<C> node, ToDoubleFunction<Node<C>> order) {
        if (node.steps() < limit) {
            queue.add(new Waiting<>(node, order.applyAsDouble(node)));
        }
    }

    private static double effort(Node<?> node) {
        return node.trial().shortfall() + node.taken() / VAIN;
    }

    /** The next steps, at most so many; none where everything was done. */
    List<Pick<C>> round(int most, List<Node<C>> front) {
        List<Pick<C>> picks = new ArrayList<>();
        if (space.nearestFirst()) {
            fromStarts(picks, most);
            if (!picks.isEmpty()) {
                return picks;
            }
        }
        fromFront(picks, Math.min(most, LESS_QUOTA), front, LESS);
        fromFront(picks, Math.min(most, picks.size() + CHANGED_QUOTA), front, CHANGED);
        fromQueue(
                picks,
                Math.min(most, picks.size() + MENDING_QUOTA),
                missing,
                MENDING,
                Lanes::effort);
        fromQueue(picks, most, others, ANY, Node::steps);
        return picks;
    }

    /** What was reached by fewest steps waits first, and that is the starts. */
    private void fromStarts(List<Pick<C>> picks, int most) {
        while (picks.size() < most && !others.isEmpty() && others.element().node.steps() == 0) {
            Node<C> start = others.element().node;
            start.take(space, MENDING)
                    .ifPresentOrElse(
                            step -> picks.add(new Pick<>(start, step)), () -> others.remove());
        }
    }

    private void fromFront(
            List<Pick<C>> picks, int most, List<Node<C>> front, List<StepEffect> turns) {
        List<Node<C>> open =
                new ArrayList<>(front.stream().filter(node -> node.steps() < limit).toList());
        while (picks.size() < most && !open.isEmpty()) {
            Node<C> next =
                    open.stream()
                            .min(
                                    Comparator.<Node<C>>comparingInt(Node::taken)
                                            .thenComparing(
                                                    Comparator.<Node<C>>comparingInt(Node::number)
                                                            .reversed()))
                            .orElseThrow();
            Optional<Step<C>> step = next.take(space, turns);
            if (step.isEmpty()) {
                open.remove(next);
            } else {
                picks.add(new Pick<>(next, step.get()));
            }
        }
    }

    private void fromQueue(
            List<Pick<C>> picks,
            int most,
            Queue<Waiting<C>> queue,
            List<StepEffect> turns,
            ToDoubleFunction<Node<C>> order) {
        while (picks.size() < most && !queue.isEmpty()) {
            Node<C> next = queue.remove().node;
            next.take(space, turns)
                    .ifPresent(
                            step -> {
                                picks.add(new Pick<>(next, step));
                                wait(queue, next, order);
                            });
        }
    }
}

package stillturning.sizing;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.element.Element.Role;
import stillturning.story.SteadyState;

/**
 * What carries the current of a short on its way from the sources and back. What a load draws
 * beside it, however much of that the low voltage makes, is no current of the short: no protector
 * has to end it.
 */
final class ShortPath {

    /** Less than this is no current (A). */
    private static final double NOTHING_AMPS = 1e-6;

    private static final Set<Role> SOURCES =
            Set.of(Role.BATTERY, Role.GENERATOR, Role.CAPACITOR, Role.CONVERTER);

    /** What carries current from one net to another. */
    private record Flow(Placed placed, int from, int to) {}

    private final Map<Integer, List<Flow>> into = new HashMap<>();
    private final Map<Integer, List<Flow>> outOf = new HashMap<>();
    private final List<Flow> shorts = new ArrayList<>();

    private ShortPath(Circuit failed, SteadyState state, Set<String> shorting) {
        for (Placed placed : failed.placed()) {
            double amps = state.amps().getOrDefault(placed.name(), 0.0);
            if (Math.abs(amps) > NOTHING_AMPS) {
                Flow flow =
                        amps > 0
                                ? new Flow(placed, placed.from(), placed.to())
                                : new Flow(placed, placed.to(), placed.from());
                into.computeIfAbsent(flow.to, net -> new ArrayList<>()).add(flow);
                outOf.computeIfAbsent(flow.from, net -> new ArrayList<>()).add(flow);
                if (shorting.contains(placed.name())) {
                    shorts.add(flow);
                }
            }
        }
    }

    /**
     * Names of the elements on the way.
     *
     * @param failed the circuit with the short in it
     * @param state what flows in it
     * @param shorting names of the elements that are the short
     */
    static Set<String> of(Circuit failed, SteadyState state, Set<String> shorting) {
        ShortPath path = new ShortPath(failed, state, shorting);
        Set<Flow> towards = path.followed(path.into, Flow::from);
        Set<Flow> back = path.followed(path.outOf, Flow::to);
        return Stream.concat(towards.stream(), back.stream())
                .map(flow -> flow.placed.name())
                .collect(Collectors.toSet());
    }

    private Set<Flow> followed(Map<Integer, List<Flow>> flows, ToIntFunction<Flow> onward) {
        Set<Flow> found = new HashSet<>(shorts);
        Deque<Integer> nets = new ArrayDeque<>();
        shorts.forEach(flow -> nets.add(onward.applyAsInt(flow)));
        while (!nets.isEmpty()) {
            for (Flow flow : flows.getOrDefault(nets.remove(), List.of())) {
                if (found.add(flow) && !isSource(flow)) {
                    nets.add(onward.applyAsInt(flow));
                }
            }
        }
        return found;
    }

    private static boolean isSource(Flow flow) {
        return SOURCES.contains(flow.placed.element().role());
    }
}

package stillturning.model;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.Circuit.Placed;
import stillturning.parts.Part;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;

/**
 * The nets where returns meet, which voltages are told against. Between systems that nothing joins
 * there is no voltage to be told, so each has its own.
 *
 * @param first that of the system which the first battery feeds, or else the first alternator: 0,
 *     or, where no structure leads the returns, that of the ground nearest to its minus
 * @param apart the same of the nets of other systems that have a source, by net
 */
public record Returns(int first, Map<Integer, Integer> apart) {

    private static final int STRUCTURE = 0;

    /** All meet on the structure. */
    public static final Returns ON_STRUCTURE = new Returns(STRUCTURE, Map.of());

    public Returns {
        apart = Map.copyOf(apart);
    }

    /** What voltages of a net are told against. */
    public int of(int net) {
        return apart.isEmpty() ? first : apart.getOrDefault(net, first);
    }

    /** All of them, the first system's first. */
    public List<Integer> all() {
        return Stream.concat(Stream.of(first), apart.values().stream().sorted())
                .distinct()
                .toList();
    }

    static Returns of(Candidate candidate, List<Placed> placed, Map<Terminal, Integer> netOf) {
        return new Search(candidate, placed, netOf).returns();
    }

    private static final class Search {

        /** Nets that a piece of metal joins, by either of them. */
        private final Map<Integer, List<Integer>> metal = new HashMap<>();

        /** Nets that anything joins. */
        private final Map<Integer, List<Integer>> joined = new HashMap<>();

        private final BitSet grounds = new BitSet();

        /** The minus of each source, as {@link #minuses} orders them. */
        private final List<Integer> minuses;

        Search(Candidate candidate, List<Placed> placed, Map<Terminal, Integer> netOf) {
            minuses = minuses(placed, netOf);
            for (Placed one : placed) {
                join(joined, one.from(), one.to());
                if (one.element().passage() == Passage.BOTH_WAYS) {
                    join(metal, one.from(), one.to());
                }
                output(one)
                        .ifPresent(
                                side ->
                                        join(
                                                joined,
                                                net(one, side.plus(), netOf),
                                                net(one, side.minus(), netOf)));
            }
            candidate
                    .all(Part.Role.GROUND)
                    .map(ground -> netOf.get(new Terminal(ground.id(), ground.entry())))
                    .forEach(grounds::set);
        }

        /** Batteries first, then what turns with the engine, then converters. */
        private static List<Integer> minuses(List<Placed> placed, Map<Terminal, Integer> netOf) {
            List<Integer> all = new ArrayList<>();
            for (Element.Role role : List.of(Element.Role.BATTERY, Element.Role.GENERATOR)) {
                placed.stream()
                        .filter(p -> p.element().role() == role)
                        .forEach(p -> all.add(p.to()));
            }
            placed.forEach(p -> output(p).ifPresent(side -> all.add(net(p, side.minus(), netOf))));
            return all;
        }

        private static Optional<Conversion.OutputSide> output(Placed placed) {
            return placed.element() instanceof Conversion conversion
                    ? Optional.of(conversion.output())
                    : Optional.empty();
        }

        private static int net(Placed placed, String terminal, Map<Terminal, Integer> netOf) {
            return terminal.equals(Element.STRUCTURE)
                    ? STRUCTURE
                    : netOf.getOrDefault(new Terminal(placed.part(), terminal), STRUCTURE);
        }

        private static void join(Map<Integer, List<Integer>> by, int one, int other) {
            by.computeIfAbsent(one, net -> new ArrayList<>()).add(other);
            by.computeIfAbsent(other, net -> new ArrayList<>()).add(one);
        }

        Returns returns() {
            if (minuses.isEmpty()) {
                return ON_STRUCTURE;
            }
            int first = meeting(minuses.get(0));
            Map<Integer, Integer> apart = new HashMap<>();
            List<Integer> known = reached(minuses.get(0), joined);
            for (int minus : minuses) {
                if (!known.contains(minus) && !apart.containsKey(minus)) {
                    int own = meeting(minus);
                    reached(minus, joined).forEach(net -> apart.put(net, own));
                }
            }
            return new Returns(first, apart);
        }

        /**
         * A structure that metal joins to a source's minus; else the ground that the fewest pieces
         * of metal lie before; else that minus itself.
         */
        private int meeting(int minus) {
            List<Integer> returns = reached(minus, metal);
            return returns.contains(STRUCTURE)
                    ? STRUCTURE
                    : returns.stream().filter(grounds::get).findFirst().orElse(minus);
        }

        /** All nets that one leads to, the nearest first. */
        private static List<Integer> reached(int from, Map<Integer, List<Integer>> by) {
            BitSet seen = new BitSet();
            List<Integer> reached = new ArrayList<>();
            Deque<Integer> next = new ArrayDeque<>(List.of(from));
            seen.set(from);
            while (!next.isEmpty()) {
                int net = next.remove();
                reached.add(net);
                for (int beyond : by.getOrDefault(net, List.of())) {
                    if (!seen.get(beyond)) {
                        seen.set(beyond);
                        next.add(beyond);
                    }
                }
            }
            return reached;
        }
    }
}

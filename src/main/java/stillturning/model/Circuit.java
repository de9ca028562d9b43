package stillturning.model;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate.Hit;
import stillturning.parts.Part;
import stillturning.parts.element.Element;

/**
 * Nets and the elements between them. Net 0 is the aircraft's structure.
 *
 * @param nets how many nets there are
 * @param returns where returns meet, which voltages are told against
 * @param placed every element with the nets at its ends, in order of parts
 * @param netOf net of every terminal
 */
public record Circuit(
        int nets, Returns returns, List<Placed> placed, Map<Terminal, Integer> netOf) {

    /**
     * An element of a part between two nets.
     *
     * @param name part and element in one name, unique in the circuit
     */
    public record Placed(String name, String part, Element element, int from, int to) {
        /** Named after part and element. */
        public Placed(String part, Element element, int from, int to) {
            this(part + "/" + element.name(), part, element, from, to);
        }
    }

    public Circuit {
        placed = List.copyOf(placed);
        netOf = Ordered.copyOf(netOf);
    }

    /** Joins a candidate's terminals into nets and places its elements, nothing wrong. */
    static Circuit of(Candidate candidate) {
        Builder builder = new Builder(candidate.joins());
        for (Part part : candidate.parts()) {
            part.terminals().forEach(name -> builder.net(part.id(), name));
        }
        for (Part part : candidate.parts()) {
            part.elements().forEach(element -> builder.place(part.id(), element));
        }
        return builder.build(Returns.of(candidate, builder.placed, builder.netOf));
    }

    /**
     * This intact circuit after failures. Its nets keep their numbers; those that only a fault has
     * come last.
     *
     * @param candidate the candidate whose circuit this is
     * @throws IllegalArgumentException if a hit names a part that the candidate has not
     */
    public Circuit failed(Candidate candidate, List<Hit> hits) {
        Set<String> struck = struck(candidate, hits);
        Builder builder = new Builder(this);
        int next = 0;
        for (Part part : candidate.parts()) {
            int end = next;
            while (end < placed.size() && placed.get(end).part.equals(part.id())) {
                end++;
            }
            if (!struck.contains(part.id())) {
                builder.placed.addAll(placed.subList(next, end));
            } else {
                altered(part, hits).forEach(element -> builder.place(part.id(), element));
            }
            next = end;
        }
        return builder.build(returns);
    }

    private static Set<String> struck(Candidate candidate, List<Hit> hits) {
        Set<String> struck = new HashSet<>();
        for (Hit hit : hits) {
            if (candidate.part(hit.part()).isEmpty()) {
                throw new IllegalArgumentException(
                        "candidate " + candidate.id() + " has no part " + hit.part());
            }
            struck.add(hit.part());
        }
        return struck;
    }

    private static List<Element> altered(Part part, List<Hit> hits) {
        List<Element> elements = part.elements();
        for (Hit hit : hits) {
            if (hit.part().equals(part.id())) {
                elements = hit.mode().on(elements);
            }
        }
        return elements;
    }

    /**
     * Net of a terminal, hidden ones included.
     *
     * @throws IllegalArgumentException if there is no such terminal
     */
    public int net(String part, String terminal) {
        return find(part, terminal)
                .orElseThrow(
                        () -> new IllegalArgumentException(part + " has no terminal " + terminal));
    }

    /** Net of a terminal, if there is one. */
    public Optional<Integer> find(String part, String terminal) {
        return terminal.equals(Element.STRUCTURE)
                ? Optional.of(0)
                : Optional.ofNullable(netOf.get(new Terminal(part, terminal)));
    }

    private static final class Builder {
        private final Map<Terminal, Terminal> leaders = new LinkedHashMap<>();
        private final Map<Terminal, Integer> numbers = new LinkedHashMap<>();
        private Map<Terminal, Integer> netOf = new LinkedHashMap<>();
        private boolean shared;
        private final List<Placed> placed = new ArrayList<>();
        private int nets = 1;

        Builder(List<Join> joins) {
            for (Join join : joins) {
                Terminal one = leader(join.one());
                Terminal other = leader(join.other());
                if (!one.equals(other)) {
                    leaders.put(other, one);
                }
            }
        }

        Builder(Circuit intact) {
            netOf = intact.netOf;
            shared = true;
            nets = intact.nets;
        }

        int net(String part, String name) {
            if (name.equals(Element.STRUCTURE)) {
                return 0;
            }
            Terminal terminal = new Terminal(part, name);
            Integer known = netOf.get(terminal);
            if (known != null) {
                return known;
            }
            if (shared) {
                netOf = new LinkedHashMap<>(netOf);
                shared = false;
            }
            int net = numbers.computeIfAbsent(leader(terminal), t -> nets++);
            netOf.put(terminal, net);
            return net;
        }

        void place(String part, Element element) {
            placed.add(
                    new Placed(part, element, net(part, element.from()), net(part, element.to())));
        }

        Circuit build(Returns returns) {
            return new Circuit(nets, returns, placed, netOf);
        }

        private Terminal leader(Terminal terminal) {
            Terminal leader = terminal;
            Terminal next = leaders.get(leader);
            while (next != null) {
                leader = next;
                next = leaders.get(leader);
            }
            Terminal at = terminal;
            while (!at.equals(leader)) {
                // the next search from here is short
                at = Objects.requireNonNull(leaders.put(at, leader));
            }
            return leader;
        }
    }
}

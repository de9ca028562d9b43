package stillturning.files.candidate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.candidate.CheckedStudy.Zones;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.parts.Part;

/** Finds the zones that wires pass: the shortest way between what they are joined to. */
final class Routes {

    private final Assembly assembly;
    private final Zones zones;
    private final Map<Terminal, List<Terminal>> joined = new HashMap<>();

    private Routes(Assembly assembly, Zones zones) {
        this.assembly = assembly;
        this.zones = zones;
        for (Assembly.Joined made : assembly.joins()) {
            Join join = made.join();
            joined.computeIfAbsent(join.one(), t -> new ArrayList<>()).add(join.other());
            joined.computeIfAbsent(join.other(), t -> new ArrayList<>()).add(join.one());
        }
    }

    /** Zones by wire, from its end a to its end b, both included. */
    static Map<String, List<String>> of(Assembly assembly, Zones zones) {
        Routes routes = new Routes(assembly, zones);
        Map<String, List<String>> found = new LinkedHashMap<>();
        for (Part part : assembly.parts()) {
            if (part.role() == Part.Role.WIRE) {
                found.put(part.id(), routes.of(part));
            }
        }
        return found;
    }

    private List<String> of(Part wire) {
        return zones.way(end(wire, wire.entry()), end(wire, wire.exit()));
    }

    /** Zone of the nearest thing that is no wire; the wire's own where there is none. */
    private String end(Part wire, String terminal) {
        Set<Terminal> seen = new HashSet<>();
        Deque<Terminal> open = new ArrayDeque<>();
        open.add(new Terminal(wire.id(), terminal));
        seen.add(new Terminal(wire.id(), wire.entry()));
        seen.add(new Terminal(wire.id(), wire.exit()));
        while (!open.isEmpty()) {
            for (Terminal next : joined.getOrDefault(open.remove(), List.of())) {
                Optional<Part> part = assembly.part(next.part());
                if (part.isPresent() && part.get().role() != Part.Role.WIRE) {
                    return part.get().tag().zone();
                }
                if (part.isPresent() && seen.add(next)) {
                    open.add(next);
                    Terminal far = otherEnd(part.get(), next);
                    if (seen.add(far)) {
                        open.add(far);
                    }
                }
            }
        }
        return wire.tag().zone();
    }

    private static Terminal otherEnd(Part wire, Terminal end) {
        String far = end.name().equals(wire.entry()) ? wire.exit() : wire.entry();
        return new Terminal(wire.id(), far);
    }
}

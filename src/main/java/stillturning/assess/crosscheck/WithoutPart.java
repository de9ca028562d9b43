package stillturning.assess.crosscheck;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.failure.Failure;
import stillturning.parts.Alteration;
import stillturning.parts.Alteration.Removed;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;
import stillturning.parts.element.Conversion;

/** A part gone with all that it does. */
final class WithoutPart {

    private WithoutPart() {}

    /**
     * The removal as a failure that a story can be told of. With a bus goes its bar: everything
     * that is joined there does nothing any more, so that nothing is joined to anything.
     */
    static Failure of(Candidate candidate, String id) {
        Circuit circuit = candidate.circuit();
        Predicate<Placed> goes = placed -> placed.part().equals(id);
        for (Part bus : candidate.all(Part.Role.BUS).filter(b -> b.id().equals(id)).toList()) {
            int bar = circuit.net(id, bus.exit());
            goes = goes.or(placed -> touches(circuit, placed, bar));
        }
        Map<String, List<Alteration>> removed = new LinkedHashMap<>();
        circuit.placed().stream()
                .filter(goes)
                .forEach(
                        placed ->
                                removed.computeIfAbsent(placed.part(), p -> new ArrayList<>())
                                        .add(new Removed(placed.element().name())));
        List<Hit> hits = new ArrayList<>();
        removed.forEach(
                (part, all) -> hits.add(new Hit(part, FailureMode.of("removed", "removed", all))));
        return new Failure(id + ": removed", hits, Map.of());
    }

    private static boolean touches(Circuit circuit, Placed placed, int net) {
        return placed.from() == net
                || placed.to() == net
                || (placed.element() instanceof Conversion conversion
                        && circuit.net(placed.part(), conversion.output().plus()) == net);
    }
}

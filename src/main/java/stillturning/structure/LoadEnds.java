package stillturning.structure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.structure.Wiring.Need;

/**
 * Where a load of the engine logic is joined.
 *
 * @param need index of what its work needs
 */
record LoadEnds(String id, int need, Need work, List<Input> inputs) {

    /** A supply input and its net. */
    record Input(String name, int net) {}

    /** Whether it has to be fed at all. */
    boolean isFed() {
        return !work.ownSource();
    }

    /** The ends of a load; nothing if the candidate has no such load. */
    static Optional<LoadEnds> of(String id, Wiring wiring) {
        OptionalInt part = wiring.part(id);
        OptionalInt need = wiring.need(id, Load.WORK);
        if (part.isEmpty()
                || need.isEmpty()
                || (wiring.parts.get(part.getAsInt()).role() != Part.Role.LOAD
                        && !wiring.needs.get(need.getAsInt()).ownSource())) {
            return Optional.empty();
        }
        List<Input> inputs =
                wiring.parts.get(part.getAsInt()).inputs().stream()
                        .map(name -> new Input(name, wiring.circuit.net(id, name)))
                        .toList();
        return Optional.of(
                new LoadEnds(id, need.getAsInt(), wiring.needs.get(need.getAsInt()), inputs));
    }
}

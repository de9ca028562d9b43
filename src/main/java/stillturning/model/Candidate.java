package stillturning.model;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stillturning.parts.FailureMode;
import stillturning.parts.Lever;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Generator;

/**
 * One electrical architecture, every part of it explicit.
 *
 * @param id file name without ending
 * @param title what a person calls it
 * @param about why one would build it so
 */
public record Candidate(
        String id,
        String title,
        String about,
        List<Part> parts,
        List<Join> joins,
        Cockpit cockpit) {

    /** One failure mode of one of the candidate's parts. */
    public record Hit(String part, FailureMode mode) {}

    public Candidate {
        parts = PartList.copyOf(parts);
        joins = List.copyOf(joins);
    }

    /** The part of this id, if the candidate has one. */
    public Optional<Part> part(String id) {
        return PartList.copyOf(parts).find(id);
    }

    /** All parts that are this to the wiring. */
    public Stream<Part> all(Part.Role role) {
        return parts.stream().filter(p -> p.role() == role);
    }

    /** All wires. */
    public Stream<Wire> wires() {
        return parts.stream().filter(Wire.class::isInstance).map(Wire.class::cast);
    }

    /** The wire of this id, if there is one. */
    public Optional<Wire> wire(String id) {
        return part(id).filter(Wire.class::isInstance).map(Wire.class::cast);
    }

    /** All loads. */
    public Stream<Load> loads() {
        return parts.stream().filter(Load.class::isInstance).map(Load.class::cast);
    }

    /** Whether a part of this id is there and is this to the wiring. */
    public boolean has(String id, Part.Role role) {
        return part(id).filter(p -> p.role() == role).isPresent();
    }

    /** All parts that make current of motion. */
    public Stream<Part> generators() {
        return parts.stream()
                .filter(p -> p.elements().stream().anyMatch(Generator.class::isInstance));
    }

    /** The lever of this name, if there is one. */
    public Optional<Lever> lever(String name) {
        return parts.stream()
                .flatMap(part -> part.levers().stream())
                .filter(lever -> lever.name().equals(name))
                .findFirst();
    }

    /** The same with each part changed. */
    public Candidate with(UnaryOperator<Part> change) {
        return new Candidate(id, title, about, parts.stream().map(change).toList(), joins, cockpit);
    }

    /** The same with levers standing elsewhere in normal flight. */
    public Candidate with(Map<String, String> positions) {
        Map<String, String> flight = new LinkedHashMap<>(cockpit.flight());
        flight.putAll(positions);
        return new Candidate(id, title, about, parts, joins, cockpit.standing(flight));
    }

    /** The same with another cockpit. */
    public Candidate with(Cockpit other) {
        return new Candidate(id, title, about, parts, joins, other);
    }

    /** The same with nobody who does anything. */
    public Candidate withoutProcedures() {
        return with(cockpit.with(List.of()));
    }

    /** The candidate's nets and elements, nothing wrong. */
    public Circuit circuit() {
        return Circuit.of(this);
    }

    /** The candidate's nets and elements after these failures. */
    public Circuit circuit(List<Hit> hits) {
        return circuit().failed(this, hits);
    }
}

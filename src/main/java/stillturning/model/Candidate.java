package stillturning.model;

import stillturning.parts.Load;
import stillturning.parts.Wire;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.parts.FailureMode;
import stillturning.parts.Part;

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
        parts = List.copyOf(parts);
        joins = List.copyOf(joins);
    }

    /** The part of this id, if the candidate has one. */
    public Optional<Part> part(String id) {
        return parts.stream().filter(p -> p.id().equals(id)).findFirst();
    }

    /** All parts that are this to the wiring. */
    public Stream<Part> all(Part.Role role) {
        return parts.stream().filter(p -> p.role() == role);
    }

    /** All wires. */
    public Stream<Wire> wires() {
        return all(Wire.class);
    }

    /** All loads. */
    public Stream<Load> loads() {
        return all(Load.class);
    }

    /** All parts of one kind. */
    public <P extends Part> Stream<P> all(Class<P> kind) {
        return parts.stream().filter(kind::isInstance).map(kind::cast);
    }

    /** The same with levers standing elsewhere in normal flight. */
    public Candidate with(Map<String, String> positions) {
        Map<String, String> flight = new LinkedHashMap<>(cockpit.flight());
        flight.putAll(positions);
        return new Candidate(
                id,
                title,
                about,
                parts,
                joins,
                new Cockpit(
                        flight,
                        cockpit.masterOff(),
                        cockpit.starting(),
                        cockpit.cues(),
                        cockpit.procedures()));
    }

    /** The same with nobody who does anything. */
    public Candidate withoutProcedures() {
        return new Candidate(
                id,
                title,
                about,
                parts,
                joins,
                new Cockpit(
                        cockpit.flight(),
                        cockpit.masterOff(),
                        cockpit.starting(),
                        cockpit.cues(),
                        List.of()));
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

package stillturning.sizing.result;

import java.util.List;
import java.util.Optional;

/**
 * Wires that go the same way: through a hole, in a bundle, or from one zone to the next.
 *
 * @param name as the study has it; of a crossing both zones
 * @param wires by name, in the candidate's order
 * @param tied what they are tied together
 * @param company which of them should not be with the others
 */
public record WirePassage(
        PassageKind kind,
        String name,
        List<String> wires,
        Tied tied,
        Surroundings surroundings,
        Company company) {

    /** What they go through. */
    public enum PassageKind {
        /** Through one hole, as the study says. */
        HOLE,
        /** In one bundle, as the study says. */
        BUNDLE,
        /** From one zone to the next, by the shortest way. */
        CROSSING
    }

    /**
     * Measures of wires that are tied together.
     *
     * @param metres diameter (m)
     * @param thickestMetres outside diameter of the thickest of them (m)
     * @param bendMetres smallest radius of a bend (m)
     * @param grommetMetres inside of a grommet that holds them (m)
     * @param holeMetres hole for that grommet (m)
     * @param bareHoleMetres hole that needs no grommet, since a clamp holds them away from its edge
     *     (m)
     */
    public record Tied(
            double metres,
            double thickestMetres,
            double bendMetres,
            double grommetMetres,
            double holeMetres,
            double bareHoleMetres) {}

    /**
     * What is around.
     *
     * @param celsius the hotter of the zones (°C)
     * @param insulationCelsius what the least of the insulations stands (°C)
     * @param firewall whether they go from the cold side to the hot one
     * @param hot whether one of the zones is on the hot side, or suffers from heat
     */
    public record Surroundings(
            double celsius, double insulationCelsius, boolean firewall, boolean hot) {}

    /**
     * Which wires should not be with the others.
     *
     * @param unguarded those through which a short drives more than they may carry, and nothing
     *     opens
     * @param apart those of which no single one ends the engine and which together do; empty where
     *     that is not so
     * @param engine how long the engine runs with them all open, where it ends (s)
     */
    public record Company(List<String> unguarded, List<String> apart, Optional<Double> engine) {
        public Company {
            unguarded = List.copyOf(unguarded);
            apart = List.copyOf(apart);
        }
    }

    public WirePassage {
        wires = List.copyOf(wires);
    }
}

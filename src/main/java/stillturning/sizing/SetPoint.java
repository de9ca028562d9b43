package stillturning.sizing;

import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.parts.element.Element.Role;
import stillturning.parts.element.Generator;
import stillturning.story.SteadyState;

/**
 * Whether alternators hold their voltage. One that does gives what the circuit draws at that
 * voltage, and a larger one in its place would give no more: what then stays uncharged is behind
 * too much drop, or wants a higher voltage.
 */
final class SetPoint {

    /** Nearer than this to the line of its droop, it holds it (V). */
    private static final double LEVEL_VOLTS = 0.01;

    private SetPoint() {}

    /** Whether every alternator is at its set point, less its droop. */
    static boolean isHeld(Circuit circuit, SteadyState flow) {
        return circuit.placed().stream()
                .filter(placed -> placed.element().role() == Role.GENERATOR)
                .allMatch(placed -> isHeld(placed, flow));
    }

    private static boolean isHeld(Placed placed, SteadyState flow) {
        if (!(placed.element() instanceof Generator generator)) {
            return false;
        }
        double given = -flow.amps(placed.part(), generator.name());
        double held =
                generator.regulation().setVolts() - generator.regulation().droopOhms() * given;
        return flow.volts(placed.part(), generator.from(), generator.to()) > held - LEVEL_VOLTS;
    }
}

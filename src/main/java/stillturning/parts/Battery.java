package stillturning.parts;

import java.util.List;
import java.util.Optional;
import stillturning.parts.Alteration.Put;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Element;
import stillturning.parts.element.Management;

/**
 * A battery between {@code plus} and {@code minus}.
 *
 * @param cells cells in series
 * @param capacity at 25 °C, with its age
 * @param ohms internal resistance full and at 25 °C, with its age (ohm)
 * @param chargeAtStart state of charge at the start of the flight, 0 to 1
 */
public record Battery(
        Tag tag,
        OpenCircuit openCircuit,
        int cells,
        Capacity capacity,
        double ohms,
        double chargeAtStart,
        Optional<Management> management)
        implements Part {

    /**
     * Share of its capacity that a worn-out battery keeps. Common practice, no published source.
     */
    private static final double WORN_OUT = 0.2;

    @Override
    public List<String> terminals() {
        return List.of("plus", "minus");
    }

    @Override
    public List<Element> elements() {
        return List.of(cell(openCircuit));
    }

    @Override
    public List<FailureMode> failureModes() {
        double rest = (cells - 1.0) / cells;
        OpenCircuit shorted = new OpenCircuit(openCircuit.curve(), openCircuit.factor() * rest);
        return List.of(
                FailureMode.of("disconnects itself", Faults.open("cell")),
                FailureMode.of("one cell shorted", new Put(cell(shorted))),
                FailureMode.of("capacity lost", new Put(aged(WORN_OUT).cell(openCircuit))));
    }

    @Override
    public String entry() {
        return "plus";
    }

    @Override
    public String exit() {
        return "plus";
    }

    @Override
    public boolean takesMany(String terminal) {
        return true;
    }

    /**
     * The same battery with a share of its capacity left, from above 0 to 1. Its resistance grows
     * as its capacity shrinks: to have lost a fifth of either charge or power is the usual end of
     * its life (from memory, unverified), and both are taken to go together.
     */
    public Battery aged(double health) {
        return new Battery(
                tag,
                openCircuit,
                cells,
                capacity.times(health),
                ohms / health,
                chargeAtStart,
                management);
    }

    private Cell cell(OpenCircuit open) {
        return new Cell(
                "cell",
                "plus",
                "minus",
                open,
                capacity,
                ohms,
                chargeAtStart,
                tag.burden().kilograms(),
                management);
    }
}

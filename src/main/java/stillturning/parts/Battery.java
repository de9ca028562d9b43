package stillturning.parts;

import java.util.List;
import java.util.Optional;
import stillturning.element.Capacity;
import stillturning.element.Cell;
import stillturning.element.Cell.OpenCircuit;
import stillturning.element.Element;
import stillturning.element.Management;
import stillturning.parts.Alteration.Put;

/**
 * A battery between {@code plus} and {@code minus}.
 *
 * @param cells cells in series
 * @param ohms internal resistance (ohm)
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
        return List.of(cell(openCircuit, capacity));
    }

    @Override
    public List<FailureMode> failureModes() {
        double rest = (cells - 1.0) / cells;
        OpenCircuit shorted = new OpenCircuit(openCircuit.curve(), openCircuit.factor() * rest);
        Capacity worn =
                new Capacity(
                        capacity.coulombs() * WORN_OUT, capacity.ratedHours(), capacity.exponent());
        return List.of(
                FailureMode.of("disconnects itself", Faults.open("cell")),
                FailureMode.of("one cell shorted", new Put(cell(shorted, capacity))),
                FailureMode.of("capacity lost", new Put(cell(openCircuit, worn))));
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

    private Cell cell(OpenCircuit open, Capacity holding) {
        return new Cell("cell", "plus", "minus", open, holding, ohms, chargeAtStart, management);
    }
}

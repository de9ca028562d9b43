package stillturning.sizing;

import java.util.List;
import stillturning.model.Circuit.Placed;
import stillturning.model.wiring.MainLines;
import stillturning.model.wiring.MainLines.MainLine;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.Cable;
import stillturning.parts.Wire;
import stillturning.sizing.result.WireSchedule.MainCircuit;
import stillturning.sizing.result.WireSchedule.VoltageDrop;
import stillturning.story.SteadyState;

/** What the wires from each source to the buses next to it drop. */
final class Mains {

    private static final double LEAK_AMPS = 1e-9;

    private final Subject subject;

    Mains(Subject subject) {
        this.subject = subject;
    }

    /** An open contact carries nothing at all. */
    private boolean closed(Placed placed) {
        SteadyState flow = subject.survey().rest(subject.study().goals().failurePhase());
        return placed.element().commandedBy().isEmpty()
                || Math.abs(flow.amps(placed.part(), placed.element().name())) > LEAK_AMPS;
    }

    List<MainCircuit> all() {
        return new MainLines(subject.candidate(), subject.circuit(), this::closed)
                .all().stream().map(this::main).toList();
    }

    private MainCircuit main(MainLine line) {
        double ohms = line.wires().stream().mapToDouble(Wire::ohms).sum();
        return new MainCircuit(
                line.source(),
                line.bus(),
                line.wires().stream().map(Wire::id).toList(),
                line.amps(),
                new VoltageDrop(
                        line.amps() * ohms,
                        PublishedLimits.MAIN_POWER_SHARE * subject.nominalVolts(),
                        true));
    }

    /** Whether a uniform size on the way would drop little enough. */
    boolean suits(MainCircuit main, Cable cable) {
        double metres =
                main.wires().stream()
                        .map(id -> subject.candidate().wire(id).orElseThrow())
                        .mapToDouble(Wire::metres)
                        .sum();
        return main.amps() * cable.ohmsPerMetre() * metres
                <= main.drop().limitVolts() * PublishedLimits.ROUNDING;
    }
}

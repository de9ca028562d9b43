package stillturning.sizing;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.model.wiring.PublishedLimits;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Wire;
import stillturning.parts.element.Consumer;
import stillturning.sizing.result.WireSchedule.LoadCircuit;
import stillturning.sizing.result.WireSchedule.LowestSupply;
import stillturning.sizing.result.WireSchedule.VoltageDrop;
import stillturning.story.SteadyState;

/** What the wires of each load drop, warm, from bus to load and back. */
final class Circuits {

    /** Resistance never takes all of a voltage: a load with less is led to by nothing (V). */
    private static final double NOTHING_VOLTS = 0.005;

    private final Subject subject;

    Circuits(Subject subject) {
        this.subject = subject;
    }

    /** Every input of every load that has wires of its own. */
    List<LoadCircuit> all() {
        List<LoadCircuit> circuits = new ArrayList<>();
        subject.candidate()
                .loads()
                .forEach(load -> load.inputs().forEach(i -> add(load, i, circuits)));
        return circuits;
    }

    private void add(Load load, String input, List<LoadCircuit> circuits) {
        Optional<LoadNeed> need = subject.study().aircraft().load(load.id());
        Optional<MetalLine> out = subject.lines().supplyOf(load, input);
        if (need.isEmpty() || out.isEmpty()) {
            return;
        }
        List<Wire> wires =
                Stream.concat(
                                subject.lines().wiresIn(out.get()).stream(),
                                subject.lines().returnOf(load).stream()
                                        .flatMap(l -> subject.lines().wiresIn(l).stream()))
                        .distinct()
                        .toList();
        double amps = amps(load, need.get());
        boolean continuous = need.get().use().duty() >= 1 && !subject.phases().isStarter(load.id());
        circuits.add(
                new LoadCircuit(
                        load.inputs().size() == 1 ? load.id() : load.id() + "." + input,
                        wires.stream().map(Wire::id).toList(),
                        amps,
                        wires.stream().mapToDouble(Wire::metres).sum(),
                        new VoltageDrop(
                                wires.stream().mapToDouble(w -> dropIn(w, amps)).sum(),
                                PublishedLimits.dropVolts(subject.nominalVolts(), continuous),
                                continuous),
                        supply(load, need.get())));
    }

    /** What the load takes while it runs and the others are at their average (A). */
    private double amps(Load load, LoadNeed need) {
        double most = 0;
        for (Phase phase : subject.study().aircraft().phases()) {
            if (counts(phase, need)) {
                double average = subject.survey().average(phase).amps(load.id(), Load.WORK);
                most = Math.max(most, average / need.use().duty());
            }
        }
        return most;
    }

    /** Whether it runs in a phase, the starting of the engine apart unless it is for that. */
    private boolean counts(Phase phase, LoadNeed need) {
        return need.use().phases().contains(phase.name())
                && (!subject.phases().starting(phase) || subject.phases().isStarter(need.id()));
    }

    private double dropIn(Wire wire, double amps) {
        return amps * wire.ohms() * subject.places().warmth(wire, wire.cable(), amps);
    }

    /** Whether a circuit of this size of wire throughout would drop little enough. */
    boolean suits(LoadCircuit circuit, Cable cable, Wire wire) {
        double volts =
                circuit.amps()
                        * cable.ohmsPerMetre()
                        * circuit.metres()
                        * subject.places().warmth(wire, cable, circuit.amps());
        return volts <= circuit.drop().limitVolts() * PublishedLimits.ROUNDING;
    }

    private LowestSupply supply(Load load, LoadNeed need) {
        double least = Double.NaN;
        String when = "";
        String without = "";
        for (Phase phase : subject.study().aircraft().phases()) {
            if (counts(phase, need)) {
                double volts = volts(load, subject.survey().rest(phase));
                if (Math.abs(volts) < NOTHING_VOLTS) {
                    without = without.isEmpty() ? phase.name() : without;
                } else if (!(volts >= least)) {
                    least = volts;
                    when = phase.name();
                }
            }
        }
        return new LowestSupply(least, need.tolerance().minimumVolts(), when, without);
    }

    /** Voltage across the part of a load that works (V). */
    static double volts(Load load, SteadyState flow) {
        Consumer work =
                load.elements().stream()
                        .filter(e -> e.name().equals(Load.WORK))
                        .map(Consumer.class::cast)
                        .findFirst()
                        .orElseThrow();
        return flow.volts(load.id(), work.from(), work.to());
    }
}

package stillturning.report.oneline;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Cue;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Guard;
import stillturning.story.Snapshot;

/**
 * From which voltage on it is too much. Nets that metal, contacts or diodes can join share one
 * limit: the lowest that the study names there, be it what a load withstands, an over-voltage
 * warning or a guard. Where it names none, 15 % above the highest voltage with nothing wrong.
 */
final class Withstand {

    /** Above every regulator's set point, below what harms electronics. Common practice. */
    private static final double TOO_MUCH = 1.15;

    private final int[] regionOf;
    private final double[] limits;
    private final Map<String, Double> ofLoads = new HashMap<>();

    Withstand(Candidate candidate, Circuit circuit, Snapshot before) {
        regionOf = new int[circuit.nets()];
        Arrays.setAll(regionOf, net -> net);
        boolean[] returns = returns(candidate, circuit);
        for (Placed placed : circuit.placed()) {
            if (placed.element().passage() != Passage.NONE
                    && !returns[placed.from()]
                    && !returns[placed.to()]) {
                join(placed.from(), placed.to());
            }
        }
        limits = new double[circuit.nets()];
        Arrays.fill(limits, Double.POSITIVE_INFINITY);
        takeNamed(candidate, circuit);
        takeUnnamed(before);
    }

    private static boolean[] returns(Candidate candidate, Circuit circuit) {
        boolean[] returns = new boolean[circuit.nets()];
        returns[0] = true;
        candidate
                .all(Part.Role.GROUND)
                .forEach(
                        point ->
                                point.terminals()
                                        .forEach(t -> returns[circuit.net(point.id(), t)] = true));
        return returns;
    }

    private void join(int one, int other) {
        regionOf[region(one)] = region(other);
    }

    private int region(int net) {
        int at = net;
        while (regionOf[at] != at) {
            at = regionOf[at];
        }
        return at;
    }

    private void takeNamed(Candidate candidate, Circuit circuit) {
        candidate
                .loads()
                .forEach(
                        load -> {
                            double volts = load.tolerance().withstandVolts();
                            ofLoads.put(load.id(), volts);
                            load.inputs().forEach(i -> limit(circuit.net(load.id(), i), volts));
                        });
        for (Cue cue : candidate.cockpit().cues()) {
            if (cue.sign() instanceof Cue.HighVolts high) {
                limit(circuit.net(high.at().part(), high.at().name()), high.volts());
            }
        }
        for (Placed placed : circuit.placed()) {
            Element element = placed.element();
            if (element instanceof Guard guard) {
                limit(circuit.net(placed.part(), guard.sense()), guard.trip().volts());
            }
        }
    }

    private void takeUnnamed(Snapshot before) {
        double[] highest = new double[limits.length];
        for (int net = 0; net < before.nets(); net++) {
            int region = region(net);
            highest[region] = Math.max(highest[region], before.volts(net));
        }
        for (int net = 0; net < limits.length; net++) {
            if (Double.isInfinite(limits[net]) && highest[net] > NetStates.DEAD_VOLTS) {
                limits[net] = TOO_MUCH * highest[net];
            }
        }
    }

    private void limit(int net, double volts) {
        limits[region(net)] = Math.min(limits[region(net)], volts);
    }

    /** Whether a net stands above what is borne there (V). */
    boolean exceeded(int net, double volts) {
        return volts > limits[region(net)];
    }

    /** Whether a load gets more than it withstands (V). */
    boolean exceeded(Load load, double volts) {
        return volts > ofLoads.getOrDefault(load.id(), Double.POSITIVE_INFINITY);
    }
}

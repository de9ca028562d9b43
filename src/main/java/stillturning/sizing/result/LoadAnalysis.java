package stillturning.sizing.result;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import stillturning.model.Phase;

/**
 * What the loads take and what the sources give, phase by phase, from the solved network.
 *
 * @param monitored whether something shows the pilot that the alternators give too little
 * @param charge each battery through each phase, in order
 */
public record LoadAnalysis(
        List<LoadRow> loads,
        List<PhaseBalance> phases,
        boolean monitored,
        List<ChargeStep> charge) {

    /**
     * A load.
     *
     * @param duty share of the time that it runs, 1 for continuous
     * @param nominalAmps its current at the study's nominal voltage (A)
     * @param at what it takes while it runs, by phase; phases in which it does not are left out
     */
    public record LoadRow(
            String load, String label, double duty, double nominalAmps, Map<String, Taken> at) {
        public LoadRow {
            at = Collections.unmodifiableMap(new LinkedHashMap<>(at));
        }

        public boolean continuous() {
            return duty >= 1;
        }
    }

    /**
     * What a load takes while it runs: current (A), voltage across it (V), and for how long (s).
     */
    public record Taken(double amps, double volts, double seconds) {}

    /**
     * A phase.
     *
     * @param average intermittent loads at their average
     * @param full every load that may run, at its full current
     * @param alternatorAmps what the alternators can give at that phase's speed (A)
     * @param setPointHeld whether every alternator holds its set point, loads at their average
     * @param batteryOnly time from the loss of all charging until the engine can no longer run
     */
    public record PhaseBalance(
            Phase phase,
            Sum average,
            Sum full,
            double alternatorAmps,
            boolean setPointHeld,
            BatteryOnly batteryOnly) {}

    /**
     * A sum over the aircraft.
     *
     * @param nameplateAmps loads at nominal voltage (A)
     * @param loadAmps loads as solved (A)
     * @param sourceAmps what leaves the sources (A)
     * @param generatedAmps of that from alternators (A)
     * @param apartAmps of that from batteries that no alternator is joined to (A)
     * @param watts where the power goes
     */
    public record Sum(
            double nameplateAmps,
            double loadAmps,
            double sourceAmps,
            double generatedAmps,
            double apartAmps,
            Watts watts) {
        /** What the batteries give (A), below 0 while they are charged. */
        public double batteryAmps() {
            return sourceAmps - generatedAmps;
        }

        /** What is taken of the alternators and the batteries that they are joined to (A). */
        public double joinedAmps() {
            return sourceAmps - apartAmps;
        }
    }

    /** Power of the sources (W), of the loads, of coils, fields and logics, and lost on the way. */
    public record Watts(double sources, double loads, double equipment) {
        /** What wires, contacts, protectors and diodes turn to heat (W). */
        public double lost() {
            return sources - loads - equipment;
        }
    }

    /** Time (s) with a pilot who does nothing, and with one who does as planned. */
    public record BatteryOnly(double unaidedSeconds, double plannedSeconds) {}

    /** State of charge of a battery at both ends of a phase, 0 to 1. */
    public record ChargeStep(String battery, String phase, double start, double end) {}

    public LoadAnalysis {
        loads = List.copyOf(loads);
        phases = List.copyOf(phases);
        charge = List.copyOf(charge);
    }
}

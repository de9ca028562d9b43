package stillturning.reliability.asbuilt;

import stillturning.parts.element.Demand;

/** What a load would draw at its nominal voltage, from what it draws at another. */
public final class LoadCurrent {

    private LoadCurrent() {}

    /** Whether its current changes with its voltage. */
    public static boolean asksForVolts(Demand demand) {
        return switch (demand.kind()) {
            case CONSTANT_CURRENT -> false;
            case CONSTANT_POWER, CONSTANT_RESISTANCE, SELF_POWERED -> true;
        };
    }

    /**
     * Its current at its nominal voltage (A).
     *
     * @param amps measured (A)
     * @param volts at its terminals meanwhile (V), above 0
     */
    public static double atNominal(Demand demand, double amps, double volts) {
        if (!(volts > 0)) {
            throw new IllegalArgumentException("a load at " + volts + " V shows nothing");
        }
        return switch (demand.kind()) {
            case CONSTANT_CURRENT -> amps;
            case CONSTANT_POWER -> amps * volts / demand.nominalVolts();
            case CONSTANT_RESISTANCE, SELF_POWERED -> amps * demand.nominalVolts() / volts;
        };
    }
}

package stillturning.story.device.plant;

import stillturning.network.law.BranchLaw;
import stillturning.network.law.Resistive;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;

/** What a motor draws before it turns. */
final class MotorAtRest {

    private MotorAtRest() {}

    /**
     * A motor at rest draws no less than at speed, at no voltage: else it would start on a supply
     * that cannot keep it running, and again without end.
     *
     * @param amps what it draws at rest at the nominal voltage; above 0
     */
    static BranchLaw law(Consumer motor, double amps, double nominalVolts) {
        double floor = motor.tolerance().minimumVolts();
        Demand demand = motor.demand();
        double atSpeed =
                switch (demand.kind()) {
                    case CONSTANT_POWER -> floor * floor / demand.watts();
                    case CONSTANT_CURRENT -> floor / demand.amps();
                    case CONSTANT_RESISTANCE, SELF_POWERED -> demand.ohms();
                };
        double atRest = nominalVolts / amps;
        return new Resistive(atSpeed > 0 ? Math.min(atRest, atSpeed) : atRest);
    }
}

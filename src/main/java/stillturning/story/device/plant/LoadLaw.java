package stillturning.story.device.plant;

import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Demand;

/** What a load draws, running or before it turns. */
final class LoadLaw {

    private LoadLaw() {}

    /**
     * A load that runs.
     *
     * @param duty share of its demand, above 0; of what is self-powered it has none
     */
    static BranchLaw running(Consumer load, double duty) {
        Demand demand = load.demand();
        double floor = load.tolerance().minimumVolts();
        return switch (demand.kind()) {
            case CONSTANT_POWER -> new ConstantPower(demand.watts() * duty, floor);
            case CONSTANT_CURRENT -> new ConstantCurrent(demand.amps() * duty, floor);
            case CONSTANT_RESISTANCE -> new Resistive(demand.ohms() / duty);
            case SELF_POWERED -> new SourceBehindOhms(demand.nominalVolts(), demand.ohms());
        };
    }

    /**
     * A motor at rest draws no less than at speed, at no voltage: else it would start on a supply
     * that cannot keep it running, and again without end.
     *
     * @param amps what it draws at rest at the nominal voltage; above 0
     */
    static BranchLaw atRest(Consumer motor, double amps, double nominalVolts) {
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

package stillturning.story.device.battery;

import stillturning.model.Circuit.Placed;
import stillturning.story.Balance.Account;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.Stateful;

/** What keeps a charge: its value is the share of a full one that it holds. */
public interface Store extends BranchDevice, Stateful {

    Placed placed();

    /** Current out of its plus (A), below 0 while it takes in. */
    double dischargeAmps();

    /** Energy that it stores each second (W), below 0 while it gives. */
    double storingWatts();

    /** Energy between a charge and the present one (J). */
    double joulesDownFrom(double before);

    /** Where the energy that it stores is counted. */
    Account account();

    /** Normal flight is reached, and time begins. */
    default void begin() {}
}

package stillturning.device;

import stillturning.network.BranchLaw;

/** A device that is a branch of the network. */
public interface Placing extends Device {

    /** Index of its branch. */
    int branch();

    /** Law for its present state. */
    BranchLaw law();
}

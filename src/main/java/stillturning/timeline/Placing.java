package stillturning.timeline;

import stillturning.network.BranchLaw;

/** A device that is a branch of the network. */
interface Placing extends Device {

    /** Index of its branch. */
    int branch();

    /** Law for its present state. */
    BranchLaw law();
}

package stillturning.story.device;

import stillturning.network.law.BranchLaw;

/** A device that is a branch of the network. */
public interface BranchDevice extends Device {

    /** Index of its branch. */
    int branch();

    /** Law for its present state. */
    BranchLaw law();

    /** Whether its law hangs on its state; else it is always the same. */
    default boolean changesLaw() {
        return true;
    }

    /** Whether it opened, burnt or broke by too much current or voltage, and has not been reset. */
    default boolean gaveWay() {
        return false;
    }
}

package stillturning.network;

import stillturning.network.law.BranchLaw;

/**
 * One two-ended element between two nets.
 *
 * @param from net where the current enters; the plus side of a source
 * @param to net where it leaves
 * @param law how much current flows at which voltage
 */
public record Branch(int from, int to, BranchLaw law) {
    /**
     * @throws IllegalArgumentException if a net is below 0 or both are the same
     */
    public Branch {
        if (from < 0 || to < 0) {
            throw new IllegalArgumentException(
                    "branch from net " + from + " to net " + to + "; nets count from 0");
        }
        if (from == to) {
            throw new IllegalArgumentException(
                    "branch from net " + from + " to itself; leave it out or give it a second net");
        }
    }
}

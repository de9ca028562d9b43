package stillturning.network;

import java.util.List;
import stillturning.network.law.BranchChecks;
import stillturning.network.law.ConverterInput;

/**
 * Nets and the branches between them. Net 0 is the reference, at 0 V.
 *
 * @param nets number of nets, at least 1
 * @param branches the branches; their order is their index
 */
public record Network(int nets, List<Branch> branches) {
    /**
     * @throws IllegalArgumentException if a branch names a net or branch that is not here
     */
    public Network {
        branches = List.copyOf(branches);
        if (nets < 1) {
            throw new IllegalArgumentException(
                    "a network has " + nets + " nets; it needs at least net 0, the reference");
        }
        for (int b = 0; b < branches.size(); b++) {
            Branch branch = branches.get(b);
            BranchChecks.index("branch " + b + " starts at net", branch.from(), nets);
            BranchChecks.index("branch " + b + " ends at net", branch.to(), nets);
            if (branch.law() instanceof ConverterInput input) {
                BranchChecks.index("output branch of " + b, input.outputBranch(), branches.size());
            }
        }
    }
}

package stillturning.dossier.proposal;

import java.util.List;
import stillturning.yaml.Problem;

/** No sizes can be proposed: the file cannot be changed, or what becomes of it not be computed. */
public final class NoProposal extends Exception {

    private static final long serialVersionUID = 1;

    private final transient List<Problem> problems;

    NoProposal(String message, List<Problem> problems) {
        super(message);
        this.problems = List.copyOf(problems);
    }

    /** What the proposed file would have wrong; none where it failed in another way. */
    public List<Problem> problems() {
        return problems;
    }
}

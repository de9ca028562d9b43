package stillturning.failure;

import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;

/** All single failures of a candidate. */
public final class FailureCatalogue {

    /** Name of the drill that takes all power off the airframe. */
    public static final String MASTER_OFF = "master off in flight";

    private FailureCatalogue() {}

    /** Every failure mode of every part, in the candidate's order. */
    public static List<Failure> singlesOf(Candidate candidate) {
        return candidate.parts().stream()
                .flatMap(
                        part ->
                                part.failureModes().stream()
                                        .map(mode -> Failure.of(new Hit(part.id(), mode))))
                .toList();
    }

    /** Things that happen without anything breaking; none where the candidate defines none. */
    public static List<Failure> operatingCasesOf(Candidate candidate) {
        return candidate.cockpit().masterOff().isEmpty()
                ? List.of()
                : List.of(Failure.levers(MASTER_OFF, candidate.cockpit().masterOff()));
    }
}

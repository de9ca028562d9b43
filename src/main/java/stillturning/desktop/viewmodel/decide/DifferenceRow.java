package stillturning.desktop.viewmodel.decide;

import java.util.Optional;

/**
 * One thing in which a candidate differs from another.
 *
 * @param what criterion, requirement, kind of part or failure
 * @param here how it is in the candidate
 * @param there how it is in the other
 * @param story failure to open, and the candidate that it is told of
 */
public record DifferenceRow(
        DifferenceGroup group,
        String what,
        String here,
        String there,
        Favours favours,
        Optional<CandidateFailure> story) {

    /** What kind of difference. */
    public enum DifferenceGroup {
        CRITERIA("Criteria"),
        REQUIREMENTS("Requirements"),
        PARTS("Parts"),
        BETTER("Failures that end better"),
        WORSE("Failures that end worse"),
        OWN("Failures that only it can have"),
        SPARED("Failures that only the other can have");

        private final String words;

        DifferenceGroup(String words) {
            this.words = words;
        }

        /** What stands above such rows. */
        public String words() {
            return words;
        }
    }

    /** For which of the two it speaks. */
    public enum Favours {
        FOR("\u25B2"),
        AGAINST("\u25BC"),
        NEITHER("");

        private final String sign;

        Favours(String sign) {
            this.sign = sign;
        }

        /** One character, so that it is seen without colour. */
        public String sign() {
            return sign;
        }
    }

    /** A failure of a candidate, by its id. */
    public record CandidateFailure(String candidate, String failure) {}
}

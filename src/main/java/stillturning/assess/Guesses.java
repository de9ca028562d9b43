package stillturning.assess;

import java.util.List;
import java.util.function.Function;

/**
 * Which guesses matter: each was tried too low and too high, all else as it is.
 *
 * @param share how far each was changed, as a fraction of its value
 * @param matter those that change something, gravest first
 * @param indifferent those that change nothing that is watched
 * @param untried those that were not tried one way, because the value cannot be that
 * @param choices guesses among words, each with one of the others in its place
 */
public record Guesses(
        double share,
        List<Weighty> matter,
        List<Guess> indifferent,
        List<Untried> untried,
        List<Choice> choices) {

    /** How far a guess is changed (fraction of its value). */
    public static final double SHARE = 0.2;

    /** Endurance that changes by less than this fraction is not called changed. */
    public static final double ENDURANCE_MATTERS = 0.1;

    /** What changes if the guess is too high, and if it is too low. */
    public record Weighty(Guess guess, List<Change> ifLess, List<Change> ifMore) {
        public Weighty {
            ifLess = List.copyOf(ifLess);
            ifMore = List.copyOf(ifMore);
        }
    }

    /** What another word than the guessed one changes. */
    public record Choice(Guess guess, String other, List<Change> changes) {
        public Choice {
            changes = List.copyOf(changes);
        }
    }

    /** A guess that was not changed to this multiple. */
    public record Untried(Guess guess, double factor) {}

    /** Something that another value changes. */
    public sealed interface Change {

        /** The new leader, or whom it is about. */
        String candidate();

        /** The answer for its kind. */
        <T> T fold(
                Function<Leader, T> leader,
                Function<Requirement, T> requirement,
                Function<Unwell, T> unwell,
                Function<Endurance, T> endurance,
                Function<Uncomputed, T> uncomputed);

        /** Another candidate takes the first place. */
        record Leader(String candidate) implements Change {
            @Override
            public <T> T fold(
                    Function<Leader, T> leader,
                    Function<Requirement, T> requirement,
                    Function<Unwell, T> unwell,
                    Function<Endurance, T> endurance,
                    Function<Uncomputed, T> uncomputed) {
                return leader.apply(this);
            }
        }

        /** A candidate meets a hard requirement that it missed, or the reverse. */
        record Requirement(String candidate, String requirement, boolean met) implements Change {
            @Override
            public <T> T fold(
                    Function<Leader, T> leader,
                    Function<Requirement, T> requirement,
                    Function<Unwell, T> unwell,
                    Function<Endurance, T> endurance,
                    Function<Uncomputed, T> uncomputed) {
                return requirement.apply(this);
            }
        }

        /** Something happens to a candidate although nothing fails. */
        record Unwell(String candidate) implements Change {
            @Override
            public <T> T fold(
                    Function<Leader, T> leader,
                    Function<Requirement, T> requirement,
                    Function<Unwell, T> unwell,
                    Function<Endurance, T> endurance,
                    Function<Uncomputed, T> uncomputed) {
                return unwell.apply(this);
            }
        }

        /** The leader's endurance without charging, before and after (s). */
        record Endurance(String candidate, double fromSeconds, double toSeconds) implements Change {
            @Override
            public <T> T fold(
                    Function<Leader, T> leader,
                    Function<Requirement, T> requirement,
                    Function<Unwell, T> unwell,
                    Function<Endurance, T> endurance,
                    Function<Uncomputed, T> uncomputed) {
                return endurance.apply(this);
            }
        }

        /** A candidate can no longer be computed. */
        record Uncomputed(String candidate, String reason) implements Change {
            @Override
            public <T> T fold(
                    Function<Leader, T> leader,
                    Function<Requirement, T> requirement,
                    Function<Unwell, T> unwell,
                    Function<Endurance, T> endurance,
                    Function<Uncomputed, T> uncomputed) {
                return uncomputed.apply(this);
            }
        }
    }

    public Guesses {
        matter = List.copyOf(matter);
        indifferent = List.copyOf(indifferent);
        untried = List.copyOf(untried);
        choices = List.copyOf(choices);
    }
}

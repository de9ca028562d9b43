package stillturning.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import stillturning.assess.findout.OpenInterval;
import stillturning.assess.findout.Worth;
import stillturning.assess.ranking.Acceptability;

/**
 * Which guesses matter: each was tried at both ends of its range, all else as it is, and along it
 * where that changed who is first or a verdict.
 *
 * @param matter those that change something, most likely to turn an answer first
 * @param indifferent those that change nothing that is watched
 * @param untried those that have no other value, or not the one at an end
 * @param choices guesses among words, each with one of the others in its place
 * @param leftOut candidates that were not looked at, as they miss too much to come first
 * @param spread what becomes of first place with all guesses anywhere in their ranges, if asked
 */
public record Guesses(
        List<Weighty> matter,
        List<Guess> indifferent,
        List<Untried> untried,
        List<GuessedWord> choices,
        List<String> leftOut,
        Optional<Acceptability> spread) {

    /** Endurance that changes by less than this fraction is not called changed. */
    public static final double ENDURANCE_MATTERS = 0.1;

    /** Candidates that miss so many requirements more than the first are not looked at. */
    public static final int MISSES_TOO_MUCH = 2;

    /**
     * What changes if the guess is too high, and if it is too low.
     *
     * @param reach the range that was tried
     * @param worth what finding it out would bring
     */
    public record Weighty(
            Guess guess,
            List<GuessChange> ifLess,
            List<GuessChange> ifMore,
            OpenInterval reach,
            Worth worth) {
        public Weighty {
            ifLess = List.copyOf(ifLess);
            ifMore = List.copyOf(ifMore);
        }
    }

    /** What another word than the guessed one changes. */
    public record GuessedWord(Guess guess, String other, List<GuessChange> changes) {
        public GuessedWord {
            changes = List.copyOf(changes);
        }
    }

    /** A guess that was not changed to this value; without one, to no other. */
    public record Untried(Guess guess, Optional<String> value) {}

    /** Something that another value changes. */
    public sealed interface GuessChange {

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
        record Leader(String candidate) implements GuessChange {
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
        record Requirement(String candidate, String requirement, boolean met)
                implements GuessChange {
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
        record Unwell(String candidate) implements GuessChange {
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
        record Endurance(String candidate, double fromSeconds, double toSeconds)
                implements GuessChange {
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
        record Uncomputed(String candidate, String reason) implements GuessChange {
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
        leftOut = List.copyOf(leftOut);
    }
}

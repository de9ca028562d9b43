package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.Scrutiny;
import stillturning.assess.suggest.Suggestion;
import stillturning.assess.suggest.Wanted;
import stillturning.assess.suggest.Wanted.Mended;
import stillturning.files.move.Drawn;
import stillturning.story.UntoldStory;

/**
 * What is to be mended.
 *
 * @param wanted all of it, in words
 * @param aim what no appraisal tells of it; absent where there is no such thing
 */
record Asked(Wanted wanted, Optional<Aim> aim, Goal goal) {

    /** What makes one change better than another. */
    enum Goal {
        /** It mends more of all that is asked for. */
        TOGETHER,
        /** It mends something that the other does not, however little. */
        ONE_BY_ONE
    }

    static Asked of(Wanted wanted) {
        return new Asked(wanted, Optional.empty(), Goal.TOGETHER);
    }

    static Asked oneByOne(Wanted wanted) {
        return new Asked(wanted, Optional.empty(), Goal.ONE_BY_ONE);
    }

    static Asked of(Aim aim) {
        return new Asked(Wanted.other(aim.words()), Optional.of(aim), Goal.TOGETHER);
    }

    /** What is left of the aim. */
    List<String> left(Drawn after, Scrutiny look) throws UntoldStory {
        List<String> left = new ArrayList<>();
        if (aim.isPresent() && aim.get().isLeft(after, look)) {
            left.add(aim.get().words());
        }
        return left;
    }

    /** Wanted requirements that are missed for certain, as far as it pays to look. */
    List<String> unmet(Appraisal before, Scrutiny look) throws UntoldStory {
        if (wanted.requirements().isEmpty()) {
            return List.of();
        }
        List<String> missed =
                switch (goal) {
                    case TOGETHER ->
                            look.refusal(Set.of()).stream()
                                    .map(Scrutiny.MissedRequirement::requirement)
                                    .toList();
                    case ONE_BY_ONE -> look.missedBy(telling(before));
                };
        return missed.stream().filter(wanted.requirements()::contains).toList();
    }

    /** Failures that are wanted, or by which a requirement is missed that is wanted. */
    private Set<String> telling(Appraisal before) {
        return Stream.concat(
                        wanted.failures().keySet().stream(),
                        before.met().stream()
                                .filter(met -> wanted.requirements().contains(met.requirement()))
                                .flatMap(met -> met.culprits().stream()))
                .collect(Collectors.toSet());
    }

    /** A changed drawing held against what was before. */
    Suggestion suggestion(Drawn after, List<String> moves, Appraisal before, Scrutiny look)
            throws UntoldStory {
        Appraisal changed = look.appraisal();
        Mended mended = wanted.mended(before, changed);
        if (aim.isPresent()) {
            mended = mended.with(aim.get().words(), aim.get().isLeft(after, look));
        }
        return Suggestion.of(after.study(), moves, mended, before, changed);
    }

    /** What a suggestion is worth, less being better in each. */
    List<Double> values(Suggestion found) {
        Collection<String> mended = found.mended().mended();
        return values(
                wanted.names().stream().filter(name -> !mended.contains(name)).toList(),
                found.values());
    }

    /**
     * The same with what is left of all that is asked for.
     *
     * @param left by name, or fewer
     */
    List<Double> values(Collection<String> left, List<Double> values) {
        return switch (goal) {
            case TOGETHER -> values;
            case ONE_BY_ONE ->
                    Stream.concat(
                                    wanted.names().stream().map(n -> left.contains(n) ? 1.0 : 0.0),
                                    values.stream())
                            .toList();
        };
    }
}

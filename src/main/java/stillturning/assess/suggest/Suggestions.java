package stillturning.assess.suggest;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.front.Tally;
import stillturning.model.Study;

/**
 * What was found that would mend a candidate.
 *
 * @param before the candidate as it is drawn
 * @param found what nothing else found outdoes: least left first, then fewest new troubles, then
 *     fewest parts touched
 * @param outweighed the same of changes that lose the engine in more ways than before
 * @param done what was looked at to find it
 */
public record Suggestions(
        Study study,
        Appraisal before,
        Wanted wanted,
        List<Suggestion> found,
        List<Suggestion> outweighed,
        LookedAt done) {
    public Suggestions {
        found = List.copyOf(found);
        outweighed = List.copyOf(outweighed);
    }

    /** The same with those that lose the engine in more ways after the others. */
    public Suggestions withOutweighed() {
        List<Suggestion> all = Stream.of(found, outweighed).flatMap(List::stream).toList();
        return new Suggestions(study, before, wanted, all, List.of(), done);
    }

    /**
     * What was looked at.
     *
     * @param moves most moves one after the other
     * @param whole whether all that can be reached by so many moves was looked at
     */
    public record LookedAt(Tally tally, int moves, boolean whole) {

        /** Nothing was looked at, since there is nothing to mend. */
        public static final LookedAt NOTHING =
                new LookedAt(new Tally(0, 0, Map.of(), 0, 0, 0, 0), 0, true);
    }
}

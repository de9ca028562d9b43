package stillturning.dossier.suggest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import stillturning.assess.front.Tally;
import stillturning.assess.suggest.LightestMends.LightMend;
import stillturning.assess.suggest.Suggestions.LookedAt;

/**
 * The lightest changes of some candidates as they are kept: which drawings, not what they mend.
 * That is found out again whenever it is told.
 *
 * @param candidates in the order in which they were asked about
 * @param untold candidates that could not be computed as they are, in words
 */
public record KeptMends(List<KeptCandidate> candidates, List<String> untold) {
    public KeptMends {
        candidates = List.copyOf(candidates);
        untold = List.copyOf(untold);
    }

    /** Those that were found. */
    public static KeptMends of(LightestFound found) {
        return new KeptMends(
                found.candidates().stream().map(KeptCandidate::of).toList(), found.untold());
    }

    /**
     * What was found of a candidate.
     *
     * @param candidate its id
     */
    public record KeptCandidate(String candidate, List<KeptChange> changes, KeptSearch search) {
        public KeptCandidate {
            changes = List.copyOf(changes);
        }

        static KeptCandidate of(LightestFound.OfCandidate found) {
            List<LightMend> mends = found.mends().withOutweighed().mends();
            List<KeptChange> changes = new ArrayList<>();
            for (int i = 0; i < found.drawings().size(); i++) {
                changes.add(
                        new KeptChange(
                                mends.get(i).suggestion().moves(),
                                found.drawings().get(i).text().text()));
            }
            return new KeptCandidate(
                    found.mends().before().candidate().id(),
                    changes,
                    KeptSearch.of(found.mends().done()));
        }
    }

    /**
     * A change.
     *
     * @param moves in words, one after the other
     * @param text of the changed file
     */
    public record KeptChange(List<String> moves, String text) {
        public KeptChange {
            moves = List.copyOf(moves);
        }
    }

    /**
     * What was done to find them.
     *
     * @param tried drawings tried
     * @param met those that mend something
     * @param outdone those that were not tried because they cannot be better
     * @param twice moves that led to what was there already
     * @param refused moves that could not be drawn
     * @param left moves known and not made
     * @param moves most moves one after the other
     * @param whole whether all within so many moves was looked at
     */
    public record KeptSearch(
            int tried,
            int met,
            int outdone,
            int twice,
            int refused,
            int left,
            int moves,
            boolean whole) {
        public KeptSearch {
            if (IntStream.of(tried, met, outdone, twice, refused, left, moves)
                    .anyMatch(count -> count < 0)) {
                throw new IllegalArgumentException("nobody counts below 0");
            }
        }

        static KeptSearch of(LookedAt done) {
            Tally tally = done.tally();
            return new KeptSearch(
                    tally.tried(),
                    tally.met(),
                    tally.outdone(),
                    tally.twice(),
                    tally.refused(),
                    tally.left(),
                    done.moves(),
                    done.whole());
        }

        LookedAt done() {
            return new LookedAt(
                    new Tally(tried, met, Map.of(), outdone, twice, refused, left), moves, whole);
        }
    }
}

package stillturning.dossier.exploration;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.IntStream;
import stillturning.assess.front.Tally;
import stillturning.model.goal.CriterionName;
import stillturning.report.explored.ExploredFront;

/**
 * What a search found, as it is kept: which drawings, not what they are worth. That is found out
 * again whenever it is told.
 *
 * @param by what layouts were compared by
 * @param front in its order
 */
public record KeptFront(List<CriterionName> by, List<KeptLayout> front, KeptSearch search) {
    public KeptFront {
        by = List.copyOf(by);
        front = List.copyOf(front);
        if (by.isEmpty() || Set.copyOf(by).size() < by.size()) {
            throw new IllegalArgumentException("layouts are compared by " + by);
        }
    }

    /**
     * A layout.
     *
     * @param candidate id of the candidate that it was made from
     * @param from what it was made from, in words
     * @param steps changes from there, in words
     * @param text of its file; empty if it is the candidate as it is drawn
     */
    public record KeptLayout(String candidate, String from, List<String> steps, String text) {
        public KeptLayout {
            steps = List.copyOf(steps);
        }
    }

    /**
     * What was done.
     *
     * @param missed layouts by the requirement that they were found to miss first
     */
    public record KeptSearch(
            int tried,
            int met,
            Map<String, Integer> missed,
            int outdone,
            int twice,
            int refused,
            SearchReach reach) {
        public KeptSearch {
            // it is written: the same search is to give the same file
            missed = Collections.unmodifiableMap(new TreeMap<>(missed));
            countable(tried, met, outdone, twice, refused);
            missed.values().forEach(count -> countable(count));
        }

        static KeptSearch of(ExploredFront.SearchExtent done) {
            Tally tally = done.tally();
            return new KeptSearch(
                    tally.tried(),
                    tally.met(),
                    tally.missed(),
                    tally.outdone(),
                    tally.twice(),
                    tally.refused(),
                    new SearchReach(tally.left(), done.mostSteps(), done.bare(), done.whole()));
        }

        ExploredFront.SearchExtent done() {
            return new ExploredFront.SearchExtent(
                    new Tally(tried, met, missed, outdone, twice, refused, reach.left),
                    reach.mostSteps,
                    reach.bare,
                    reach.whole);
        }
    }

    /**
     * How far it went.
     *
     * @param left steps known and not taken
     * @param mostSteps changes from a start that it was allowed
     * @param bare stripped layouts that it began with
     * @param whole whether everything within those changes was looked at
     */
    public record SearchReach(int left, int mostSteps, int bare, boolean whole) {
        public SearchReach {
            countable(left, mostSteps, bare);
        }
    }

    private static void countable(int... counts) {
        if (IntStream.of(counts).anyMatch(count -> count < 0)) {
            throw new IllegalArgumentException("nobody counts below 0");
        }
    }
}

package stillturning.report.explored;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stillturning.assess.Appraisal;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.Assessment;
import stillturning.assess.front.Tally;
import stillturning.model.goal.CriterionName;

/**
 * What a search found, everything on the front assessed in full.
 *
 * @param assessment of the drawings and of everything on the front
 * @param by what layouts were compared by
 * @param front what nothing found outdoes, in the order of the first criterion
 * @param drawings the study's own candidates that could be computed, in their order
 * @param search what was done to find it
 * @param beside what else was found out of the front
 */
public record ExploredFront(
        Assessment assessment,
        Yardstick by,
        List<ExploredLayout> front,
        List<ExploredLayout> drawings,
        SearchExtent search,
        FurtherFigures beside) {

    /**
     * A layout.
     *
     * @param id of its candidate in the assessment
     * @param from title of what it was made from
     * @param steps changes from there, in words; none of a drawing as it is
     */
    public record ExploredLayout(String id, String from, List<String> steps) {
        public ExploredLayout {
            steps = List.copyOf(steps);
        }
    }

    /**
     * What a search did.
     *
     * @param mostSteps changes from a start that it was allowed
     * @param bare layouts stripped of everything that was started from beside the drawings
     * @param whole whether everything within those changes was looked at
     */
    public record SearchExtent(Tally tally, int mostSteps, int bare, boolean whole) {}

    /**
     * What else was found out of the front, by the id of a layout.
     *
     * @param brokenLimits limits of sizes that it breaks; nothing of one that could not be sized
     * @param pairs pairs of failures that end its engine though neither does alone; empty if that
     *     was not asked
     */
    public record FurtherFigures(Map<String, Integer> brokenLimits, Map<String, Integer> pairs) {
        public FurtherFigures {
            brokenLimits = Map.copyOf(brokenLimits);
            pairs = Map.copyOf(pairs);
        }
    }

    /** The same with the number of pairs that end the engine, by the id of a layout. */
    public ExploredFront withPairs(Map<String, Integer> pairs) {
        return new ExploredFront(
                assessment,
                by,
                front,
                drawings,
                search,
                new FurtherFigures(beside.brokenLimits, pairs));
    }

    public ExploredFront {
        front = List.copyOf(front);
        drawings = List.copyOf(drawings);
    }

    /**
     * The appraisal of a layout.
     *
     * @throws IllegalArgumentException if it is none of these
     */
    public Appraisal of(ExploredLayout layout) {
        return assessment
                .of(layout.id())
                .orElseThrow(() -> new IllegalArgumentException("no layout " + layout.id()));
    }

    /** A layout's value by a criterion. */
    public double value(ExploredLayout layout, CriterionName criterion) {
        return requireNonNull(of(layout).measures().values().get(criterion), criterion.words());
    }

    /** Whether a drawing is on the front. */
    public boolean isOnFront(ExploredLayout drawing) {
        return front.stream().anyMatch(layout -> layout.id().equals(drawing.id()));
    }

    /** Requirements that a layout misses, in words. */
    public List<String> missed(ExploredLayout layout) {
        return of(layout).met().stream()
                .filter(met -> !met.met())
                .map(RequirementMet::requirement)
                .toList();
    }

    /** The layout on the front that is made from a drawing by the fewest changes. */
    public Optional<ExploredLayout> nearestFrom(ExploredLayout drawing) {
        return front.stream()
                .filter(layout -> layout.from().equals(drawing.from()))
                .filter(layout -> !layout.steps().isEmpty())
                .min((one, other) -> Integer.compare(one.steps().size(), other.steps().size()));
    }

    /** Layouts on the front that are as good as a drawing by everything that is compared. */
    public List<ExploredLayout> outdoing(ExploredLayout drawing) {
        return front.stream()
                .filter(layout -> !layout.id().equals(drawing.id()))
                .filter(layout -> asGood(steps(layout), steps(drawing)))
                .toList();
    }

    private List<Double> steps(ExploredLayout layout) {
        return by.of(of(layout).measures().values());
    }

    private static boolean asGood(List<Double> one, List<Double> other) {
        return IntStream.range(0, one.size()).allMatch(i -> one.get(i) <= other.get(i));
    }

    /** By how much one is worse than another; below 0 if it is better. */
    private double loss(ExploredLayout one, ExploredLayout other, CriterionName criterion) {
        double here = value(one, criterion);
        double there = value(other, criterion);
        if (here == there) {
            return 0;
        }
        return criterion.moreIsBetter() ? there - here : here - there;
    }

    /** The best by one criterion; the first of them where several are. */
    public Optional<ExploredLayout> best(CriterionName criterion) {
        return front.stream().reduce((one, other) -> loss(one, other, criterion) > 0 ? other : one);
    }
}

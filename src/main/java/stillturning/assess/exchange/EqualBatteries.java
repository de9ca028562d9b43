package stillturning.assess.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import stillturning.assess.Appraisal;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.assess.ranking.Standing;

/**
 * What becomes of the first place when batteries are equal: each rival with the leader's, and the
 * leader with each rival's.
 *
 * @param leader who is first with the batteries as they are
 * @param rivals from each rival to the leader, in order of standing
 * @param same rivals whose batteries are like the leader's
 * @param untried rivals that miss too many requirements for batteries to mend it, or whose mixes
 *     cannot be assessed
 */
public record EqualBatteries(
        String leader, List<Attribution> rivals, List<String> same, List<String> untried) {

    /** A rival that misses so many more requirements than the leader is not tried. */
    private static final int TOO_MANY_MISSED = 2;

    public EqualBatteries {
        rivals = List.copyOf(rivals);
        same = List.copyOf(same);
        untried = List.copyOf(untried);
    }

    /** At most so many mixes are assessed for it: four for each rival of the leader. */
    public static int mixes(Assessment basis) {
        return 4 * Math.max(0, basis.appraisals().size() - 1);
    }

    /**
     * Tries the rivals of an assessment's leader.
     *
     * @param progress told the name of a rival after each mix, from any thread
     * @return empty if nothing was ranked
     */
    public static Optional<EqualBatteries> of(Assessment basis, Consumer<String> progress) {
        return basis.ranking().flatMap(ranking -> of(basis, ranking, progress));
    }

    private static Optional<EqualBatteries> of(
            Assessment basis, RankingResult ranking, Consumer<String> progress) {
        Standing first = ranking.leader();
        return basis.of(first.name()).map(leader -> of(basis, ranking, leader, progress));
    }

    private static EqualBatteries of(
            Assessment basis, RankingResult ranking, Appraisal leader, Consumer<String> progress) {
        List<Attribution> tried = new ArrayList<>();
        List<String> same = new ArrayList<>();
        List<String> untried = new ArrayList<>();
        int missed = ranking.leader().missedGates().size();
        Exchange exchange = new Exchange(basis);
        for (Standing standing : ranking.standings().subList(1, ranking.standings().size())) {
            Optional<Appraisal> rival = basis.of(standing.name());
            boolean near = standing.missedGates().size() < missed + TOO_MANY_MISSED;
            if (rival.filter(r -> alike(r, leader)).isPresent()) {
                same.add(standing.name());
            } else {
                rival.filter(r -> near)
                        .flatMap(r -> exchange.ofBatteries(r, leader, progress))
                        .ifPresentOrElse(tried::add, () -> untried.add(standing.name()));
            }
        }
        return new EqualBatteries(leader.candidate().id(), tried, same, untried);
    }

    private static boolean alike(Appraisal one, Appraisal other) {
        return BatteryPairs.of(one.candidate(), other.candidate()).stream()
                        .allMatch(BatteryPairs.Pair::alike)
                && !BatteryPairs.of(one.candidate(), other.candidate()).isEmpty();
    }

    /** The rival with the leader's batteries. */
    public static Mix withTheLeaders(Attribution rival) {
        return rival.mixes().get(1);
    }

    /** The leader with a rival's batteries; it is the rival itself where nothing else differs. */
    public static Mix withTheRivals(Attribution rival) {
        return rival.mixes().size() == 2 ? rival.none() : rival.mixes().get(2);
    }

    /** Above 0 if the leader stays before a rival once both have the leader's batteries. */
    public static int ifBothHaveTheLeaders(Attribution rival) {
        return rival.all().against(withTheLeaders(rival));
    }

    /** Above 0 if the leader stays before a rival once both have the rival's batteries. */
    public static int ifBothHaveTheRivals(Attribution rival) {
        return withTheRivals(rival).against(rival.none());
    }

    /** Who would be first, level ones too, if all that can had the leader's batteries. */
    public List<String> firstWithTheLeaders() {
        if (rivals.isEmpty()) {
            return List.of(leader);
        }
        Mix best = rivals.get(0).all();
        for (Attribution rival : rivals) {
            best = withTheLeaders(rival).against(best) > 0 ? withTheLeaders(rival) : best;
        }
        List<String> first = new ArrayList<>();
        if (rivals.get(0).all().against(best) == 0) {
            first.add(leader);
        }
        for (Attribution rival : rivals) {
            if (withTheLeaders(rival).against(best) == 0) {
                first.add(rival.from().id());
            }
        }
        return List.copyOf(first);
    }

    /**
     * Rivals that draw level or come first with equal batteries; first those that do so with the
     * leader's own, which it was chosen with.
     */
    public List<Attribution> turning() {
        return rivals.stream()
                .filter(r -> ifBothHaveTheLeaders(r) <= 0 || ifBothHaveTheRivals(r) <= 0)
                .sorted(
                        Comparator.comparingInt(
                                        (Attribution r) -> Integer.signum(ifBothHaveTheLeaders(r)))
                                .thenComparingInt(r -> Integer.signum(ifBothHaveTheRivals(r))))
                .toList();
    }
}

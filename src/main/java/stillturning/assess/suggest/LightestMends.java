package stillturning.assess.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.assess.Appraisal;
import stillturning.assess.suggest.Suggestions.LookedAt;
import stillturning.model.Study;

/**
 * The lightest change that was found for each single thing that is wrong with a candidate.
 *
 * @param before the candidate as it is drawn
 * @param wanted what is wrong with it
 * @param mends those that mend most of it first
 * @param outweighed the same of changes that lose the engine in more ways than before: for what no
 *     other change mends, or mends as lightly
 * @param done what was looked at to find them
 */
public record LightestMends(
        Study study,
        Appraisal before,
        Wanted wanted,
        List<LightMend> mends,
        List<LightMend> outweighed,
        LookedAt done) {

    /** The lightest, then the cheapest, then the simplest. */
    private static final Comparator<Suggestion> LIGHTEST =
            Comparator.<Suggestion>comparingDouble(s -> s.after().kilograms())
                    .thenComparing(s -> s.after().price())
                    .thenComparing(s -> s.after().complexity())
                    .thenComparing(s -> s.after().parts())
                    .thenComparing(s -> s.after().acts())
                    .thenComparing(Suggestion::touched)
                    .thenComparing(s -> s.troubles().size());

    /** Less of a difference no builder notices (kg). */
    private static final double NOTICED = 0.1;

    private static final Comparator<Suggestion> LEAST_TROUBLE =
            Comparator.<Suggestion>comparingInt(s -> s.troubles().size()).thenComparing(LIGHTEST);

    public LightestMends {
        mends = List.copyOf(mends);
        outweighed = List.copyOf(outweighed);
    }

    /**
     * A change that is the lightest for something.
     *
     * @param first what it is the first choice for: of all that mend that it brings the fewest new
     *     troubles, and of those it is the lightest
     * @param lighter what it mends with less weight than the first choice, and with more new
     *     troubles
     */
    public record LightMend(Suggestion suggestion, List<String> first, List<String> lighter) {
        public LightMend {
            first = List.copyOf(first);
            lighter = List.copyOf(lighter);
        }
    }

    /** The lightest of some changes, each assessed in full. */
    public static LightestMends among(
            Study study, Appraisal before, Wanted wanted, List<Suggestion> looked, LookedAt done) {
        List<Chosen> chosen = looked.stream().map(Chosen::new).toList();
        List<Chosen> inOrder = new ArrayList<>();
        for (String one : wanted.names()) {
            List<Chosen> fine = mending(one, chosen, false);
            List<Chosen> outweighed = mending(one, chosen, true);
            Optional<Chosen> best =
                    fine.stream()
                            .min(by(LEAST_TROUBLE))
                            .or(() -> outweighed.stream().min(by(LEAST_TROUBLE)));
            best.ifPresent(c -> c.first.add(one));
            best.ifPresent(inOrder::add);
            Optional<Chosen> lighter = lighter(fine, best);
            inOrder.addAll(toldLighter(one, lighter));
            inOrder.addAll(toldLighter(one, lighter(outweighed, lighter.or(() -> best))));
        }
        return new LightestMends(
                study, before, wanted, mends(inOrder, false), mends(inOrder, true), done);
    }

    private static List<Chosen> mending(String one, List<Chosen> all, boolean outweighed) {
        return all.stream()
                .filter(c -> c.change.isOutweighed() == outweighed)
                .filter(c -> c.change.mended().mended().contains(one))
                .toList();
    }

    /** The lightest of some, where one notices that it is lighter than another. */
    private static Optional<Chosen> lighter(List<Chosen> some, Optional<Chosen> than) {
        return some.stream().min(by(LIGHTEST)).filter(c -> than.filter(c::isLighter).isPresent());
    }

    private static List<Chosen> toldLighter(String one, Optional<Chosen> lighter) {
        lighter.ifPresent(c -> c.lighter.add(one));
        return lighter.stream().toList();
    }

    private static List<LightMend> mends(List<Chosen> inOrder, boolean outweighed) {
        return inOrder.stream()
                .distinct()
                .filter(c -> c.change.isOutweighed() == outweighed)
                .sorted(Comparator.comparingInt(Chosen::mended).reversed())
                .map(Chosen::mend)
                .toList();
    }

    private static Comparator<Chosen> by(Comparator<Suggestion> order) {
        return (one, other) -> order.compare(one.change, other.change);
    }

    /** A change, and what it was chosen for so far. */
    private static final class Chosen {
        private final Suggestion change;
        private final List<String> first = new ArrayList<>();
        private final List<String> lighter = new ArrayList<>();

        Chosen(Suggestion change) {
            this.change = change;
        }

        int mended() {
            return change.mended().mended().size();
        }

        boolean isLighter(Chosen other) {
            return other.change.after().kilograms() - change.after().kilograms() >= NOTICED;
        }

        LightMend mend() {
            return new LightMend(change, first, lighter);
        }
    }

    /** The same with those that lose the engine in more ways after the others. */
    public LightestMends withOutweighed() {
        List<LightMend> all = Stream.of(mends, outweighed).flatMap(List::stream).toList();
        return new LightestMends(study, before, wanted, all, List.of(), done);
    }

    /** What is mended by nothing that was looked at. */
    public List<String> unmended() {
        Set<String> mended = mended(false);
        mended.addAll(mended(true));
        return wanted.names().stream().filter(name -> !mended.contains(name)).toList();
    }

    /** What is mended by nothing but changes that lose the engine in more ways than before. */
    public List<String> mendedAtALoss() {
        Set<String> mended = mended(false);
        Set<String> atALoss = mended(true);
        return wanted.names().stream()
                .filter(name -> atALoss.contains(name) && !mended.contains(name))
                .toList();
    }

    private Set<String> mended(boolean isOutweighed) {
        return withOutweighed().mends.stream()
                .map(LightMend::suggestion)
                .filter(suggestion -> suggestion.isOutweighed() == isOutweighed)
                .flatMap(suggestion -> suggestion.mended().mended().stream())
                .collect(Collectors.toCollection(HashSet::new));
    }
}

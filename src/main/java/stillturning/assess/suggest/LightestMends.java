package stillturning.assess.suggest;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.Appraisal;
import stillturning.assess.suggest.Suggestions.LookedAt;
import stillturning.model.Study;

/**
 * The lightest change that was found for each single thing that is wrong with a candidate.
 *
 * @param before the candidate as it is drawn
 * @param wanted what is wrong with it
 * @param mends those that mend most of it first
 * @param done what was looked at to find them
 */
public record LightestMends(
        Study study, Appraisal before, Wanted wanted, List<LightMend> mends, LookedAt done) {

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
            List<Chosen> mending =
                    chosen.stream().filter(c -> c.change.mended().mended().contains(one)).toList();
            Optional<Chosen> best = mending.stream().min(by(LEAST_TROUBLE));
            Optional<Chosen> lightest =
                    mending.stream().min(by(LIGHTEST)).filter(c -> c.isLighter(best.orElse(c)));
            best.ifPresent(c -> c.first.add(one));
            lightest.ifPresent(c -> c.lighter.add(one));
            best.ifPresent(inOrder::add);
            lightest.ifPresent(inOrder::add);
        }
        return new LightestMends(
                study,
                before,
                wanted,
                inOrder.stream()
                        .distinct()
                        .sorted(Comparator.comparingInt(Chosen::mended).reversed())
                        .map(Chosen::mend)
                        .toList(),
                done);
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

    /** What is mended by nothing that was looked at. */
    public List<String> unmended() {
        Set<String> mended = new HashSet<>();
        mends.forEach(mend -> mended.addAll(mend.suggestion.mended().mended()));
        return wanted.names().stream().filter(name -> !mended.contains(name)).toList();
    }
}

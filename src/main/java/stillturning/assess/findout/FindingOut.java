package stillturning.assess.findout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map.Entry;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.DoubleFunction;

/** Looks along the range of one number. */
public final class FindingOut {

    /** A turn is known to this part of the range. */
    public static final double NEAR = 1.0 / 256;

    private static final int AGAIN = 6;

    private final DoubleFunction<Optional<Look>> at;
    private final double likely;
    private final NavigableMap<Double, Look> looks = new TreeMap<>();
    private final List<Turn> turns = new ArrayList<>();
    private final int leader;

    private FindingOut(DoubleFunction<Optional<Look>> at, double likely, Look asLikely) {
        this.at = at;
        this.likely = likely;
        looks.put(likely, asLikely);
        leader = asLikely.best(0);
    }

    /**
     * What finding it out would bring.
     *
     * @param at what is seen at a place, from 0 for the low end of the range to 1; empty where the
     *     number cannot be so. An end that cannot be is moved half-way to the likely value until it
     *     can
     * @param likely place of the likely value
     * @param asLikely what is seen there
     */
    public static Worth of(DoubleFunction<Optional<Look>> at, double likely, Look asLikely) {
        return new FindingOut(at, likely, asLikely).worth();
    }

    private Worth worth() {
        end(0);
        end(1);
        double low = looks.firstKey();
        double high = looks.lastKey();
        if (low == high) {
            return Worth.NOTHING;
        }
        for (double end : new double[] {low, high}) {
            turnsBetween(likely, end);
        }
        if (turns.isEmpty()) {
            return Worth.NOTHING;
        }
        turns.sort(Comparator.comparingDouble(t -> Math.abs(t.before() - likely)));
        boolean first = looks.values().stream().anyMatch(l -> l.best(leader) != leader);
        double coarse = first ? gain() : 0;
        if (first) {
            List.copyOf(looks.entrySet()).forEach(this::midwayAfter);
        }
        double fine = first ? gain() : 0;
        double whole = high - low;
        return new Worth(
                share(true) / whole,
                share(false) / whole,
                turns.stream().mapToDouble(t -> Math.abs(t.after() - t.before())).sum() / 2 / whole,
                fine / whole,
                Math.abs(fine - coarse) / whole + steps() / whole,
                turns);
    }

    private void end(double wanted) {
        double place = wanted;
        for (int n = 0; n < AGAIN && place != likely; n++) {
            if (look(place).isPresent()) {
                return;
            }
            place = (place + likely) / 2;
        }
    }

    private Optional<Look> look(double place) {
        Optional<Look> known = Optional.ofNullable(looks.get(place)).or(() -> at.apply(place));
        known.ifPresent(look -> looks.put(place, look));
        return known;
    }

    /** Halves until every change of the answer is near enough. */
    private void turnsBetween(double from, double to) {
        Optional<Look> here = look(from);
        Optional<Look> there = look(to);
        if (here.isEmpty() || there.isEmpty() || alike(here.get(), there.get())) {
            return;
        }
        double middle = (from + to) / 2;
        if (Math.abs(to - from) <= NEAR || look(middle).isEmpty()) {
            boolean first = here.get().best(leader) != there.get().best(leader);
            turns.add(new Turn(from, to, first));
        } else {
            turnsBetween(from, middle);
            turnsBetween(middle, to);
        }
    }

    private boolean alike(Look one, Look other) {
        return one.best(leader) == other.best(leader) && one.verdicts().equals(other.verdicts());
    }

    /** Another look where the answer does not turn, so that bends are seen. */
    private void midwayAfter(Entry<Double, Look> from) {
        Double to = looks.higherKey(from.getKey());
        if (to != null && to - from.getKey() > NEAR) {
            Optional<Look> unused = look((from.getKey() + to) / 2);
        }
    }

    /** Length of the range in which the answer is another; half of what lies between. */
    private double share(boolean firstAlone) {
        Look basis = at(likely);
        double sum = 0;
        for (Entry<Double, Look> from : looks.entrySet()) {
            Entry<Double, Look> to = looks.higherEntry(from.getKey());
            if (to != null) {
                double ends = other(basis, from.getValue(), firstAlone);
                ends += other(basis, to.getValue(), firstAlone);
                sum += (to.getKey() - from.getKey()) * ends / 2;
            }
        }
        return sum;
    }

    private int other(Look basis, Look look, boolean firstAlone) {
        boolean another = firstAlone ? look.best(leader) != leader : !alike(basis, look);
        return another ? 1 : 0;
    }

    private Look at(double place) {
        return looks.getOrDefault(place, looks.firstEntry().getValue());
    }

    /** The mean of the best less the best of the means, times the length of the range. */
    private double gain() {
        int candidates = at(likely).worths().size();
        double best = integral(look -> look.worths().get(look.best(leader)));
        double fixed = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < candidates; i++) {
            int candidate = i;
            fixed = Math.max(fixed, integral(look -> look.worths().get(candidate)));
        }
        return Math.max(0, best - fixed);
    }

    private interface Height {
        double of(Look look);
    }

    private double integral(Height height) {
        double sum = 0;
        for (Entry<Double, Look> from : looks.entrySet()) {
            Entry<Double, Look> to = looks.higherEntry(from.getKey());
            if (to != null) {
                double heights = height.of(from.getValue()) + height.of(to.getValue());
                sum += (to.getKey() - from.getKey()) * heights / 2;
            }
        }
        return sum;
    }

    /** What the steps at the turns may be off, as nobody knows where between they are. */
    private double steps() {
        double sum = 0;
        for (Turn turn : turns) {
            double most = 0;
            for (int i = 0; i < at(likely).worths().size(); i++) {
                double before = at(turn.before()).worths().get(i);
                most = Math.max(most, Math.abs(at(turn.after()).worths().get(i) - before));
            }
            sum += most * Math.abs(turn.after() - turn.before()) / 2;
        }
        return sum;
    }
}

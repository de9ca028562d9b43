package stillturning.report;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import stillturning.report.drawing.plot.Series.Sample;

/**
 * Leaves out samples that a straight line between the others shows as well.
 *
 * @see "D. Douglas, T. Peucker, Cartographica 10(2) (1973) 112-122 (from memory), with the distance
 *     taken along the value"
 */
final class SampleThinning {

    private record Stretch(int from, int to) {}

    private SampleThinning() {}

    /** The samples to keep, each left-out one within the tolerance of the line between them. */
    static List<Sample> of(List<Sample> samples, double tolerance) {
        BitSet kept = new BitSet();
        Deque<Stretch> open = new ArrayDeque<>();
        if (!samples.isEmpty()) {
            kept.set(0);
            kept.set(samples.size() - 1);
            open.push(new Stretch(0, samples.size() - 1));
        }
        while (!open.isEmpty()) {
            Stretch stretch = open.pop();
            int farthest = farthest(samples, stretch, tolerance);
            if (farthest > 0) {
                kept.set(farthest);
                open.push(new Stretch(stretch.from, farthest));
                open.push(new Stretch(farthest, stretch.to));
            }
        }
        List<Sample> thinned = new ArrayList<>();
        kept.stream().forEach(i -> thinned.add(samples.get(i)));
        return List.copyOf(thinned);
    }

    private static int farthest(List<Sample> samples, Stretch stretch, double tolerance) {
        Sample from = samples.get(stretch.from);
        Sample to = samples.get(stretch.to);
        double span = to.seconds() - from.seconds();
        int farthest = 0;
        double worst = tolerance;
        for (int i = stretch.from + 1; i < stretch.to; i++) {
            Sample at = samples.get(i);
            double share = span > 0 ? (at.seconds() - from.seconds()) / span : 0;
            double off = Math.abs(at.value() - from.value() - share * (to.value() - from.value()));
            if (off > worst) {
                worst = off;
                farthest = i;
            }
        }
        return farthest;
    }
}

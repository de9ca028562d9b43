package stillturning.report.drawing.plot;

import java.util.List;

/**
 * One value over time, straight between its samples.
 *
 * @param samples in order of time; two at the same time make a step
 */
public record Series(String name, List<Sample> samples) {
    public Series {
        samples = List.copyOf(samples);
        double last = Double.NEGATIVE_INFINITY;
        for (Sample sample : samples) {
            if (sample.seconds() < last) {
                throw new IllegalArgumentException(
                        name + ": sample at " + sample.seconds() + " s follows one at " + last);
            }
            last = sample.seconds();
        }
    }

    /** A value at a time (s). */
    public record Sample(double seconds, double value) {
        public Sample {
            if (!Double.isFinite(seconds) || !Double.isFinite(value)) {
                throw new IllegalArgumentException(
                        "sample " + value + " at " + seconds + " s cannot be drawn");
            }
        }
    }
}

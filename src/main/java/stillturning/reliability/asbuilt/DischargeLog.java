package stillturning.reliability.asbuilt;

import java.util.ArrayList;
import java.util.List;

/**
 * What instruments showed while a battery was discharged.
 *
 * @param samples in the order of time
 */
public record DischargeLog(List<LogSample> samples) {

    /** More than this are averaged in groups: they would tell no more. */
    private static final int MOST_SAMPLES = 4000;

    /**
     * One reading.
     *
     * @param seconds since any instant (s)
     * @param volts between its poles (V)
     * @param amps out of its plus (A)
     */
    public record LogSample(double seconds, double volts, double amps) {
        public LogSample {
            if (!Double.isFinite(seconds) || !Double.isFinite(volts) || !Double.isFinite(amps)) {
                throw new IllegalArgumentException(
                        "a reading of " + seconds + " s, " + volts + " V, " + amps + " A is none");
            }
        }
    }

    public DischargeLog {
        samples = List.copyOf(samples);
        for (int i = 1; i < samples.size(); i++) {
            if (!(samples.get(i).seconds > samples.get(i - 1).seconds)) {
                throw new IllegalArgumentException(
                        "reading "
                                + (i + 1)
                                + " at "
                                + samples.get(i).seconds
                                + " s does not come after the one before it");
            }
        }
    }

    /** How long it lasts (s). */
    public double seconds() {
        return samples.isEmpty()
                ? 0
                : samples.get(samples.size() - 1).seconds - samples.get(0).seconds;
    }

    /** Charge that left the battery (C). */
    public double coulombs() {
        double sum = 0;
        for (int i = 1; i < samples.size(); i++) {
            LogSample before = samples.get(i - 1);
            LogSample now = samples.get(i);
            sum += (before.amps + now.amps) / 2 * (now.seconds - before.seconds);
        }
        return sum;
    }

    /** Least current (A). */
    public double leastAmps() {
        return samples.stream().mapToDouble(LogSample::amps).min().orElse(0);
    }

    /** Largest current (A). */
    public double mostAmps() {
        return samples.stream().mapToDouble(LogSample::amps).max().orElse(0);
    }

    /** The same with neighbours averaged, where it has more readings than anything needs. */
    DischargeLog condensed() {
        if (samples.size() <= MOST_SAMPLES) {
            return this;
        }
        int group = (samples.size() + MOST_SAMPLES - 1) / MOST_SAMPLES;
        List<LogSample> means = new ArrayList<>();
        for (int from = 0; from < samples.size(); from += group) {
            means.add(mean(samples.subList(from, Math.min(samples.size(), from + group))));
        }
        return new DischargeLog(means);
    }

    private static LogSample mean(List<LogSample> group) {
        double seconds = 0;
        double volts = 0;
        double amps = 0;
        for (LogSample sample : group) {
            seconds += sample.seconds;
            volts += sample.volts;
            amps += sample.amps;
        }
        int count = group.size();
        return new LogSample(seconds / count, volts / count, amps / count);
    }
}

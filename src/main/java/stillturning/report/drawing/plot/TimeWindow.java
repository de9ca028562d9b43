package stillturning.report.drawing.plot;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** The stretch of time (s) that one panel shows. */
record TimeWindow(double from, double to) {

    /** Steps to which the ends of a stretch are rounded, for its length. */
    private static final double ROUNDING = 20;

    /** Room on both sides of the events that a stretch is for, as a share of it. */
    private static final double ROOM = 0.12;

    /** From the start until something has happened. */
    static TimeWindow until(double last, double earliest) {
        double to = roundedUp(last * (1 + ROOM));
        return new TimeWindow(Math.max(earliest, -0.08 * to), to);
    }

    /** Around what happens between two times. */
    static TimeWindow around(double first, double last) {
        double room = ROOM * (last - first);
        double step = Ticks.step((last - first + 2 * room) / ROUNDING);
        return new TimeWindow(
                rounded(first - room, step, RoundingMode.FLOOR),
                rounded(last + room, step, RoundingMode.CEILING));
    }

    private static double rounded(double seconds, double step, RoundingMode mode) {
        BigDecimal exact = BigDecimal.valueOf(step);
        return BigDecimal.valueOf(seconds).divide(exact, 0, mode).multiply(exact).doubleValue();
    }

    private static double roundedUp(double seconds) {
        double step = Ticks.step(seconds / ROUNDING);
        return rounded(seconds, step, RoundingMode.CEILING);
    }

    double share(double seconds) {
        return (seconds - from) / (to - from);
    }

    boolean holds(double seconds) {
        return seconds >= from && seconds <= to;
    }

    boolean holds(TimeWindow other) {
        return other.from >= from && other.to <= to;
    }

    TimeUnit unit() {
        return TimeUnit.forSpan(to - from);
    }

    /** The time that its axis counts from (s): the start of the story, if it shows that. */
    double origin() {
        return Math.max(0, from);
    }
}

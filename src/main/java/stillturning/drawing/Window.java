package stillturning.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The stretch of time (s) that one panel shows. */
record Window(double from, double to) {
    /** What happens within this share of a panel from its start wants a panel of its own. */
    private static final double TOO_EARLY = 0.05;

    /** Room before the start, for samples from there, as a share of the time after it. */
    private static final double LEAD_IN = 0.08;

    private static final int MOST_PANELS = 3;

    double share(double seconds) {
        return (seconds - from) / (to - from);
    }

    boolean holds(double seconds) {
        return seconds >= from && seconds <= to;
    }

    /** The panels' windows, the shortest first, the whole story last. */
    static List<Window> of(Plot plot) {
        double from =
                plot.series().stream()
                        .flatMap(series -> series.samples().stream())
                        .mapToDouble(Series.Sample::seconds)
                        .reduce(0, Math::min);
        List<Double> times = times(plot);
        List<Window> windows = new ArrayList<>();
        double to = plot.untilSeconds();
        windows.add(until(to, from));
        while (windows.size() < MOST_PANELS) {
            double early = to * TOO_EARLY;
            double last = times.stream().filter(t -> t < early).reduce(0.0, Math::max);
            if (last == 0) {
                break;
            }
            to = roundedUp(last * 1.15);
            windows.add(0, until(to, from));
        }
        return List.copyOf(windows);
    }

    private static Window until(double to, double earliest) {
        return new Window(Math.max(earliest, -LEAD_IN * to), to);
    }

    /** The times at which something happens, and the end. */
    private static List<Double> times(Plot plot) {
        Stream<Double> events = plot.events().stream().map(EventMark::seconds);
        Stream<Double> changes =
                plot.states().stream()
                        .flatMap(row -> row.spans().stream())
                        .flatMap(span -> Stream.of(span.fromSeconds(), span.toSeconds()));
        double end = plot.untilSeconds();
        return Stream.concat(Stream.concat(events, changes), Stream.of(end))
                .filter(seconds -> seconds > 0 && seconds <= end)
                .distinct()
                .sorted()
                .toList();
    }

    private static double roundedUp(double seconds) {
        double decade = Math.pow(10, Math.floor(Math.log10(seconds)));
        return Stream.of(1.0, 1.2, 1.5, 2.0, 3.0, 4.0, 5.0, 6.0, 8.0, 10.0)
                .map(step -> step * decade)
                .filter(rounded -> rounded >= seconds)
                .findFirst()
                .orElse(10 * decade);
    }
}

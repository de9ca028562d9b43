package stillturning.report.drawing.plot;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Which stretches of a story get a panel of their own: beside the whole, those in which events
 * stand apart that the others show as one. The beginning goes first, since there the failure is.
 */
final class TimeWindows {

    /** Events are told apart if they lie this share of a panel from each other. */
    private static final double APART = 0.02;

    private static final int MOST_ENLARGED = 3;

    /** A third enlargement makes all panels narrow, so it has to tell more than one apart. */
    private static final int WORTH_A_THIRD = 3;

    /** In a story of more events only the beginning is enlarged. */
    private static final int MOST_TIMES = 400;

    private final TimeWindow whole;
    private final List<Double> times;

    /** Whether a time and the next one can be told apart in the panels chosen so far. */
    private final boolean[] apart;

    private final List<TimeWindow> chosen = new ArrayList<>();

    private TimeWindows(TimeWindow whole, List<Double> times) {
        this.whole = whole;
        this.times = times;
        this.apart = new boolean[Math.max(0, times.size() - 1)];
    }

    /** The panels from left to right: in order of time, the whole story last. */
    static List<TimeWindow> of(Plot plot) {
        double earliest =
                plot.graphs().stream()
                        .flatMap(graph -> graph.series().stream())
                        .flatMap(series -> series.samples().stream())
                        .mapToDouble(Series.Sample::seconds)
                        .reduce(0, Math::min);
        double end = plot.untilSeconds();
        TimeWindow whole = new TimeWindow(Math.max(earliest, -0.08 * end), end);
        return new TimeWindows(whole, times(plot)).chosen();
    }

    /** The times at which something happens. */
    private static List<Double> times(Plot plot) {
        Stream<Double> events = plot.events().stream().map(EventMark::seconds);
        Stream<Double> changes =
                plot.states().stream()
                        .flatMap(row -> row.spans().stream())
                        .map(StateRow.RowSpan::fromSeconds);
        return Stream.concat(events, changes)
                .filter(seconds -> seconds >= 0 && seconds <= plot.untilSeconds())
                .distinct()
                .sorted()
                .toList();
    }

    private List<TimeWindow> chosen() {
        choose(whole);
        best(beginnings(), 1).ifPresent(this::choose);
        List<TimeWindow> all = new ArrayList<>(beginnings());
        all.addAll(clusters());
        Optional<TimeWindow> next = best(all, 1);
        while (next.isPresent() && chosen.size() <= MOST_ENLARGED) {
            choose(next.get());
            next = best(all, chosen.size() == MOST_ENLARGED ? WORTH_A_THIRD : 1);
        }
        chosen.sort(
                Comparator.comparing((TimeWindow w) -> w.equals(whole))
                        .thenComparing(TimeWindow::origin)
                        .thenComparing(TimeWindow::to));
        return List.copyOf(chosen);
    }

    private void choose(TimeWindow window) {
        chosen.add(window);
        for (int i = 0; i < apart.length; i++) {
            apart[i] |= parts(window, i);
        }
    }

    private List<TimeWindow> beginnings() {
        return times.stream()
                .filter(time -> time > 0)
                .map(time -> TimeWindow.until(time, whole.from()))
                .filter(window -> window.to() < whole.to() / 2)
                .distinct()
                .toList();
    }

    private List<TimeWindow> clusters() {
        List<TimeWindow> clusters = new ArrayList<>();
        for (int i = 0; i < times.size() && times.size() <= MOST_TIMES; i++) {
            for (int j = i + 1; j < times.size(); j++) {
                TimeWindow window = TimeWindow.around(times.get(i), times.get(j));
                if (window.from() > 0
                        && window.to() <= whole.to()
                        && window.to() - window.from() < whole.to() / 2) {
                    clusters.add(window);
                }
            }
        }
        return clusters;
    }

    /** The stretch that tells most further events apart, the longest of equals. */
    private Optional<TimeWindow> best(List<TimeWindow> among, int worth) {
        Optional<TimeWindow> best = Optional.empty();
        int most = worth;
        for (TimeWindow window : among) {
            int gain = gain(window);
            boolean longer = best.map(b -> length(window) > length(b)).orElse(true);
            if (gain > most || (gain == most && longer)) {
                most = gain;
                best = Optional.of(window);
            }
        }
        return best;
    }

    private int gain(TimeWindow window) {
        int gain = 0;
        for (int i = 0; i < apart.length; i++) {
            gain += !apart[i] && parts(window, i) ? 1 : 0;
        }
        return gain;
    }

    private static double length(TimeWindow window) {
        return window.to() - window.from();
    }

    /** Whether a window shows a time and the next one far enough from each other. */
    private boolean parts(TimeWindow window, int time) {
        double one = times.get(time);
        double next = times.get(time + 1);
        return window.holds(one)
                && window.holds(next)
                && window.share(next) - window.share(one) >= APART;
    }
}

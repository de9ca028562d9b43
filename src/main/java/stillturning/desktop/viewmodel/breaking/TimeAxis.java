package stillturning.desktop.viewmodel.breaking;

import java.util.ArrayList;
import java.util.List;
import stillturning.report.StoryPlot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;

/**
 * A story's time laid along a line from 0 to 1 so that milliseconds and hours have room on it: from
 * one event to the next time runs evenly, and a stretch is as long as its duration has digits.
 *
 * @param seconds times of the events and of the end, rising, the first of them 0 (s)
 * @param positions where they lie, rising from 0 to 1
 */
public record TimeAxis(List<Double> seconds, List<Double> positions) {

    /** From here on a duration has its first digit (s). */
    private static final double SHORTEST_SECONDS = 1e-3;

    private static final double LONGEST_WATCH_SECONDS = 30;

    public TimeAxis {
        seconds = List.copyOf(seconds);
        positions = List.copyOf(positions);
        if (seconds.size() < 2 || seconds.size() != positions.size()) {
            throw new IllegalArgumentException(
                    seconds.size() + " times at " + positions.size() + " positions are no axis");
        }
    }

    /** The axis of a story, ending with its plot. */
    public static TimeAxis of(Story story) {
        List<Double> times = new ArrayList<>(List.of(0.0));
        story.happenings().stream()
                .map(StoryEvent::seconds)
                .filter(s -> s > 0)
                .distinct()
                .sorted()
                .forEach(times::add);
        double end = StoryPlot.endSeconds(story);
        if (end > times.get(times.size() - 1)) {
            times.add(end);
        }
        List<Double> along = new ArrayList<>(List.of(0.0));
        for (int i = 1; i < times.size(); i++) {
            along.add(along.get(i - 1) + length(times.get(i) - times.get(i - 1)));
        }
        double whole = along.get(along.size() - 1);
        return new TimeAxis(times, along.stream().map(a -> a / whole).toList());
    }

    private static double length(double seconds) {
        return Math.log10(1 + seconds / SHORTEST_SECONDS);
    }

    /** Where a time lies, from 0 to 1. */
    public double position(double at) {
        return carried(at, seconds, positions);
    }

    /** The time at a position (s). */
    public double secondsAt(double position) {
        return carried(position, positions, seconds);
    }

    /** The end of the axis (s). */
    public double endSeconds() {
        return seconds.get(seconds.size() - 1);
    }

    /**
     * How long it takes to watch all of it if its shortest stretch takes so long (s), or half a
     * minute if that is less.
     */
    double watchSeconds(double shortestStretch) {
        double shortest = 1;
        for (int i = 1; i < positions.size(); i++) {
            shortest = Math.min(shortest, positions.get(i) - positions.get(i - 1));
        }
        return Math.min(LONGEST_WATCH_SECONDS, shortestStretch / shortest);
    }

    private static double carried(double value, List<Double> from, List<Double> to) {
        int last = from.size() - 1;
        if (!(value > from.get(0))) {
            return to.get(0);
        }
        for (int i = 1; i <= last; i++) {
            if (value <= from.get(i)) {
                double share = (value - from.get(i - 1)) / (from.get(i) - from.get(i - 1));
                return share >= 1 ? to.get(i) : to.get(i - 1) + share * (to.get(i) - to.get(i - 1));
            }
        }
        return to.get(last);
    }

    /** The first event after a time (s); the end if there is none. */
    public double next(double after) {
        return seconds.stream().filter(s -> s > after).findFirst().orElse(endSeconds());
    }

    /** The last event before a time (s); 0 if there is none. */
    public double previous(double before) {
        double found = 0;
        for (double at : seconds) {
            found = at < before ? at : found;
        }
        return found;
    }
}

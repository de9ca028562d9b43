package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.drawing.EventMark;
import stillturning.drawing.Plot;
import stillturning.drawing.Series;
import stillturning.drawing.Series.Sample;
import stillturning.drawing.StateRow;
import stillturning.drawing.StateRow.Fill;
import stillturning.drawing.StateRow.Span;
import stillturning.drawing.TimePlot;
import stillturning.story.Happening;
import stillturning.story.Happening.Kind;
import stillturning.story.Story;
import stillturning.story.Trace;

/** A story's voltages, charges and states over time, as SVG. */
final class StoryPlots {

    /** Room after the last event, as a share of the time before it. */
    private static final double TAIL = 1.15;

    private static final double SHORTEST_SECONDS = 0.5;

    /** A sample that lies this near to the straight line between others is left out. */
    private static final double VOLTS = 0.03;

    private static final double PERCENT = 0.3;

    /** A charge that moves less than this is not worth a plot (%). */
    private static final double VISIBLE_PERCENT = 1;

    /** Loads that change together within this share of the time do it at once to the eye. */
    private static final double AT_ONCE = 0.02;

    private final String id;
    private final Story story;
    private final Set<String> engineLoads;
    private final double until;

    private StoryPlots(String id, Story story, Set<String> engineLoads) {
        this.id = id;
        this.story = story;
        this.engineLoads = engineLoads;
        double last = story.happenings().stream().mapToDouble(Happening::seconds).max().orElse(0);
        double wanted = Math.max(SHORTEST_SECONDS, last * TAIL);
        until =
                roundedUp(
                        story.endSeconds() > last ? Math.min(wanted, story.endSeconds()) : wanted);
    }

    /** To an end that an axis can be labelled with (s). */
    private static double roundedUp(double seconds) {
        double step = seconds < 1 ? 0.01 : seconds <= 180 ? 1 : seconds <= 3 * 3600 ? 60 : 360;
        return Math.ceil(seconds / step - 1e-9) * step;
    }

    /**
     * Bus voltages above the states of engine and loads.
     *
     * @param id prefix of the names inside the picture
     */
    static String voltages(String id, Story story, Set<String> engineLoads) {
        StoryPlots plots = new StoryPlots(id, story, engineLoads);
        return plots.drawn("v", "Voltage (V)", plots.series("V", VOLTS), plots.states());
    }

    /**
     * Battery charges, where they move.
     *
     * @param id prefix of the names inside the picture
     */
    static Optional<String> charges(String id, Story story) {
        StoryPlots plots = new StoryPlots(id, story, Set.of());
        List<Series> charges = plots.series("%", PERCENT);
        return charges.stream().anyMatch(StoryPlots::moves)
                ? Optional.of(plots.drawn("c", "Charge (%)", charges, List.of()))
                : Optional.empty();
    }

    private String drawn(
            String suffix, String quantity, List<Series> series, List<StateRow> states) {
        List<EventMark> marks =
                Telling.of(story).stream()
                        .filter(line -> line.seconds() <= until)
                        .map(line -> new EventMark(line.number(), line.seconds()))
                        .toList();
        return TimePlot.of(
                        new Plot(
                                id + suffix,
                                story.failure().name() + ": " + quantity,
                                quantity,
                                until,
                                series,
                                marks,
                                List.of(),
                                states))
                .toSvg();
    }

    private List<Series> series(String unit, double tolerance) {
        return story.traces().stream()
                .filter(t -> t.unit().equals(unit) && !t.points().isEmpty())
                .map(t -> new Series(t.name(), samples(t, tolerance)))
                .toList();
    }

    private List<Sample> samples(Trace trace, double tolerance) {
        List<Sample> all =
                trace.points().stream()
                        .filter(p -> p.seconds() <= until * 1.02)
                        .map(p -> new Sample(p.seconds(), p.value()))
                        .toList();
        return Thinning.of(all, tolerance);
    }

    private static boolean moves(Series series) {
        double low = series.samples().stream().mapToDouble(Sample::value).min().orElse(0);
        double high = series.samples().stream().mapToDouble(Sample::value).max().orElse(0);
        return high - low >= VISIBLE_PERCENT;
    }

    /** The engine, and below it the loads that it needs, those that change together in one row. */
    private List<StateRow> states() {
        List<StateRow> rows = new ArrayList<>();
        rows.add(new StateRow("engine", engineSpans()));
        Map<String, List<Span>> spans = darkSpans();
        List<String> left = new ArrayList<>(spans.keySet());
        while (!left.isEmpty()) {
            List<Span> first = spans.getOrDefault(left.get(0), List.of());
            List<String> together =
                    left.stream()
                            .filter(load -> alike(first, spans.getOrDefault(load, List.of())))
                            .toList();
            String more = together.size() > 1 ? " +" + (together.size() - 1) : "";
            rows.add(new StateRow(left.get(0) + more, first));
            left.removeAll(together);
        }
        return rows;
    }

    private static boolean alike(List<Span> one, List<Span> other) {
        if (one.size() != other.size()) {
            return false;
        }
        for (int i = 0; i < one.size(); i++) {
            double apart = Math.abs(one.get(i).toSeconds() - other.get(i).toSeconds());
            if (apart > AT_ONCE * one.get(i).toSeconds()) {
                return false;
            }
        }
        return true;
    }

    private List<Span> engineSpans() {
        List<Span> spans = new ArrayList<>();
        double from = 0;
        String state = "runs";
        for (Happening h : story.happenings()) {
            String next =
                    switch (h.kind()) {
                        case ENGINE_INTERRUPTED -> "falters";
                        case ENGINE_RECOVERS, ENGINE_RESTARTS -> "runs";
                        case ENGINE_STOPS -> "stopped";
                        default -> state;
                    };
            if (!next.equals(state)) {
                addSpan(spans, from, h.seconds(), state);
                from = h.seconds();
                state = next;
            }
        }
        addSpan(spans, from, until, state);
        return spans;
    }

    private void addSpan(List<Span> spans, double from, double to, String state) {
        double end = Math.min(to, until);
        if (end > from) {
            Fill fill =
                    switch (state) {
                        case "runs", "works" -> Fill.LIGHT;
                        case "falters" -> Fill.HATCHED;
                        default -> Fill.SOLID;
                    };
            spans.add(new Span(from, end, state, fill));
        }
    }

    /** When each of the engine's loads works, for those that stop on the way. */
    private Map<String, List<Span>> darkSpans() {
        Map<String, List<Happening>> changes = new LinkedHashMap<>();
        for (Happening h : story.happenings()) {
            boolean change =
                    h.kind() == Kind.LOAD_STOPS
                            || h.kind() == Kind.LOAD_RESTARTS
                            || h.kind() == Kind.LOAD_DESTROYED;
            if (change && engineLoads.contains(h.part())) {
                changes.computeIfAbsent(h.part(), p -> new ArrayList<>()).add(h);
            }
        }
        Map<String, List<Span>> rows = new LinkedHashMap<>();
        changes.forEach((load, list) -> rows.put(load, spans(list)));
        return rows;
    }

    private List<Span> spans(List<Happening> changes) {
        List<Span> spans = new ArrayList<>();
        double from = 0;
        String state = "works";
        for (Happening h : changes) {
            addSpan(spans, from, h.seconds(), state);
            from = h.seconds();
            state = h.kind() == Kind.LOAD_RESTARTS ? "works" : "dark";
        }
        addSpan(spans, from, until, state);
        return spans;
    }
}

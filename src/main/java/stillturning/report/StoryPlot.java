package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.plot.EventMark;
import stillturning.report.drawing.plot.Graph;
import stillturning.report.drawing.plot.Plot;
import stillturning.report.drawing.plot.Series;
import stillturning.report.drawing.plot.Series.Sample;
import stillturning.report.drawing.plot.StateRow;
import stillturning.report.drawing.plot.StateRow.Fill;
import stillturning.report.drawing.plot.TimePlot;
import stillturning.story.StateBar;
import stillturning.story.StateBar.Activity;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.Trace;

/**
 * One picture of one story: bus voltages, charges where they move, and below them what the engine
 * and each of its loads were doing. The numbers above are those of the lines of {@link StoryText}.
 */
public final class StoryPlot {

    /** Room after the last event, as a share of the time before it. */
    private static final double TAIL = 1.15;

    private static final double SHORTEST_SECONDS = 0.5;

    /** A sample that lies this near to the straight line between others is left out. */
    private static final double VOLTS = 0.03;

    private static final double PERCENT = 0.3;

    /** A charge that moves less than this is not worth a graph (%). */
    private static final double VISIBLE_PERCENT = 1;

    /** Pixels of a PNG for one of the drawing. */
    private static final int SHARPNESS = 2;

    private final Story story;
    private final double until;

    private StoryPlot(Story story) {
        this.story = story;
        double last = story.happenings().stream().mapToDouble(StoryEvent::seconds).max().orElse(0);
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
     * As SVG text.
     *
     * @param id prefix of the names inside the picture
     */
    public static String svg(String id, String title, Story story) {
        return new StoryPlot(story).picture(id, title).toSvg();
    }

    /**
     * As a picture in which everything has the name that a person calls it by.
     *
     * @param id prefix of the names inside the picture
     */
    public static Picture picture(
            String id, String title, Story story, UnaryOperator<String> called) {
        return TimePlot.of(plot(id, title, story, called));
    }

    /**
     * The plot before it is drawn, everything in it with the name that a person calls it by.
     *
     * @param id prefix of the names inside the picture
     */
    public static Plot plot(String id, String title, Story story, UnaryOperator<String> called) {
        Plot plot = new StoryPlot(story).plot(id, title);
        return new Plot(
                plot.id(),
                plot.title(),
                plot.untilSeconds(),
                plot.graphs().stream().map(g -> named(g, called)).toList(),
                plot.events(),
                plot.states().stream()
                        .map(row -> new StateRow(called.apply(row.name()), row.spans()))
                        .toList());
    }

    private static Graph named(Graph graph, UnaryOperator<String> called) {
        return new Graph(
                graph.quantity(),
                graph.series().stream()
                        .map(s -> new Series(called.apply(s.name()), s.samples()))
                        .toList(),
                graph.thresholds(),
                graph.range());
    }

    /** As the bytes of a PNG, two pixels for each of the drawing. */
    public static byte[] png(String title, Story story) {
        return new StoryPlot(story).picture("story", title).toPng(SHARPNESS);
    }

    /**
     * The plot before it is drawn.
     *
     * @param id prefix of the names inside the picture
     */
    public static Plot plot(String id, String title, Story story) {
        return new StoryPlot(story).plot(id, title);
    }

    /** Where the plot of a story ends (s): some time after its last event. */
    public static double endSeconds(Story story) {
        return new StoryPlot(story).until;
    }

    private Picture picture(String id, String title) {
        return TimePlot.of(plot(id, title));
    }

    private Plot plot(String id, String title) {
        List<EventMark> marks =
                EventLines.of(story).stream()
                        .filter(line -> line.seconds() <= until)
                        .map(line -> new EventMark(line.number(), line.seconds()))
                        .toList();
        List<StateRow> rows = story.bars().stream().map(this::row).toList();
        return new Plot(id, title, until, graphs(), marks, rows);
    }

    private List<Graph> graphs() {
        List<Graph> graphs = new ArrayList<>();
        graphs.add(new Graph("Voltage (V)", series("V", VOLTS), List.of(), new Graph.AsFound()));
        List<Series> charges = series("%", PERCENT);
        if (charges.stream().anyMatch(StoryPlot::moves)) {
            graphs.add(new Graph("Charge (%)", charges, List.of(), new Graph.FixedRange(0, 100)));
        }
        return graphs;
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
        return SampleThinning.of(all, tolerance);
    }

    private static boolean moves(Series series) {
        double low = series.samples().stream().mapToDouble(Sample::value).min().orElse(0);
        double high = series.samples().stream().mapToDouble(Sample::value).max().orElse(0);
        return high - low >= VISIBLE_PERCENT;
    }

    /** The last state goes on to the end of the picture. */
    private StateRow row(StateBar bar) {
        List<StateRow.RowSpan> spans = new ArrayList<>();
        for (int i = 0; i < bar.spans().size(); i++) {
            StateBar.StateSpan span = bar.spans().get(i);
            double to = i + 1 < bar.spans().size() ? Math.min(span.toSeconds(), until) : until;
            if (span.fromSeconds() < to) {
                Activity doing = switchedOff(bar, span) ? Activity.SWITCHED_OFF : span.doing();
                spans.add(new StateRow.RowSpan(span.fromSeconds(), to, doing.words(), fill(doing)));
            }
        }
        return new StateRow(bar.name(), spans);
    }

    private static Fill fill(Activity doing) {
        return switch (doing) {
            case RUNS, WORKS -> Fill.LIGHT;
            case FALTERS, STARVED -> Fill.HATCHED;
            case STOPPED -> Fill.SOLID;
            case SWITCHED_OFF -> Fill.EMPTY;
        };
    }

    /** Whether a load stopped because somebody took its supply away on purpose. */
    private boolean switchedOff(StateBar bar, StateBar.StateSpan span) {
        return span.doing() == Activity.STOPPED
                && story.of(Kind.LOAD_STOPS).stream()
                        .filter(h -> h.part().equals(bar.name()))
                        .filter(h -> h.seconds() == span.fromSeconds())
                        .flatMap(h -> cause(h))
                        .anyMatch(this::onPurpose);
    }

    private Stream<StoryEvent> cause(StoryEvent of) {
        return of.cause() < 0 ? Stream.empty() : Stream.of(story.happenings().get(of.cause()));
    }

    private boolean onPurpose(StoryEvent happening) {
        return happening.kind().isAct()
                || (happening.kind() == Kind.FAILURE && story.failure().hits().isEmpty());
    }
}

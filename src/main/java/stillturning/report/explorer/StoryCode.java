package stillturning.report.explorer;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import stillturning.report.EventLines;
import stillturning.report.StoryPlot;
import stillturning.report.drawing.plot.Graph;
import stillturning.report.drawing.plot.Plot;
import stillturning.report.drawing.plot.Series;
import stillturning.report.drawing.plot.StateRow;
import stillturning.report.explorer.NumberedTexts.NumberedText;
import stillturning.report.oneline.DrawingStates;
import stillturning.story.WatchedStory;

/** A story as a tree of numbers and texts. */
final class StoryCode {

    /** Times are told to so many digits. */
    private static final MathContext DIGITS = new MathContext(5);

    /** Events nearer to each other than this are one moment (s). */
    private static final double ONE_MOMENT = 1e-6;

    private static final int HUNDREDTHS = 100;

    private final WatchedStory watched;
    private final UnaryOperator<String> called;
    private final Plot plot;

    /**
     * @param called what a sentence is with labels in the place of names
     */
    StoryCode(WatchedStory watched, UnaryOperator<String> called) {
        this.watched = watched;
        this.called = called;
        this.plot = StoryPlot.plot("story", "", watched.story());
    }

    /**
     * Its end (s), its moments, what was measured, and what engine and loads did.
     *
     * @param before how the drawing looked before anything failed
     */
    List<Object> tree(DrawingCode drawing, DrawingStates states, String before) {
        return List.of(
                number(plot.untilSeconds()), moments(drawing, states, before), series(), bars());
    }

    /** Time (s), what changes on the drawing, and of each line its time, words and cause. */
    private List<Object> moments(DrawingCode drawing, DrawingStates states, String before) {
        List<Object> moments = new ArrayList<>();
        String look = before;
        for (List<EventLines.EventLine> together : instants(EventLines.of(watched.story()))) {
            double seconds = together.get(together.size() - 1).seconds();
            String now = drawing.letters(states.at(watched.at(seconds)));
            List<Object> moment = new ArrayList<>();
            moment.add(number(seconds));
            moment.add(new NumberedText(DrawingCode.changes(look, now)));
            for (EventLines.EventLine line : together) {
                moment.add(new NumberedText(line.time()));
                moment.add(new NumberedText(called.apply(line.event())));
                moment.add(line.because());
            }
            moments.add(moment);
            look = now;
        }
        return moments;
    }

    private static List<List<EventLines.EventLine>> instants(List<EventLines.EventLine> lines) {
        List<List<EventLines.EventLine>> instants = new ArrayList<>();
        double before = Double.NEGATIVE_INFINITY;
        for (EventLines.EventLine line : lines) {
            if (line.seconds() - before >= ONE_MOMENT) {
                instants.add(new ArrayList<>());
            }
            instants.get(instants.size() - 1).add(line);
            before = line.seconds();
        }
        return instants;
    }

    /** The number of the graph, a name, and "seconds value" pairs. */
    private List<Object> series() {
        List<Object> all = new ArrayList<>();
        for (int graph = 0; graph < plot.graphs().size(); graph++) {
            Graph one = plot.graphs().get(graph);
            for (Series series : one.series()) {
                all.add(graph);
                all.add(new NumberedText(called.apply(series.name())));
                all.add(new NumberedText(samples(series)));
            }
        }
        return all;
    }

    private static String samples(Series series) {
        return series.samples().stream()
                .map(s -> number(s.seconds()) + " " + hundredths(s.value()))
                .distinct()
                .collect(Collectors.joining(","));
    }

    private static Object hundredths(double value) {
        return whole(Math.rint(value * HUNDREDTHS) / HUNDREDTHS);
    }

    /** A name, and when what begins. */
    private List<Object> bars() {
        List<Object> all = new ArrayList<>();
        for (StateRow row : plot.states()) {
            all.add(new NumberedText(called.apply(row.name())));
            all.add(
                    new NumberedText(
                            row.spans().stream()
                                    .map(s -> number(s.fromSeconds()) + " " + s.label())
                                    .collect(Collectors.joining(","))));
        }
        return all;
    }

    private static Object number(double value) {
        return whole(new BigDecimal(value).round(DIGITS).doubleValue());
    }

    /** Without a point where nothing follows it. */
    private static Object whole(double value) {
        return value == Math.rint(value) ? (Object) (long) value : (Object) value;
    }
}

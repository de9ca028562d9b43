package stillturning.report.drawing.plot;

import java.util.DoubleSummaryStatistics;
import java.util.stream.Stream;

/** The upright axis: from a round number below all values to one above. */
record ValueAxis(double low, double high, Ticks ticks) {
    private static final int MOST_TICKS = 8;
    private static final int FEW_TICKS = 5;

    static ValueAxis of(Graph graph) {
        return graph.range().scale(graph);
    }

    static ValueAxis between(double low, double high) {
        return new ValueAxis(low, high, Ticks.within(low, high, FEW_TICKS));
    }

    static ValueAxis around(Graph graph) {
        DoubleSummaryStatistics all =
                Stream.concat(
                                graph.series().stream()
                                        .flatMap(series -> series.samples().stream())
                                        .map(Series.Sample::value),
                                graph.thresholds().stream().map(Threshold::value))
                        .mapToDouble(value -> value)
                        .summaryStatistics();
        double low = all.getCount() == 0 ? 0 : all.getMin();
        double high = all.getCount() == 0 ? 1 : all.getMax();
        // a flat line still needs a scale to lie on
        double least = Math.max(Math.abs(high), 1) * 1e-3;
        if (high - low < least) {
            low -= least / 2;
            high += least / 2;
        }
        double step = Ticks.step((high - low) / (MOST_TICKS - 2));
        double from = Math.floor(low / step + 1e-9) * step;
        double top = Math.ceil(high / step - 1e-9) * step;
        // a line at the very top would hide in the frame
        double to = top - high < step / 20 ? top + step / 2 : top;
        return new ValueAxis(from, to, Ticks.within(from, to, MOST_TICKS + 1));
    }

    /** Place of a value between the lower end (0) and the upper (1). */
    double share(double value) {
        return (value - low) / (high - low);
    }
}

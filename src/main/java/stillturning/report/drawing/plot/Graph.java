package stillturning.report.drawing.plot;

import java.util.List;

/**
 * Values of one quantity over time.
 *
 * @param quantity what the upright axis counts, with its unit, such as "Voltage (V)"
 * @param range what the axis shows
 */
public record Graph(
        String quantity, List<Series> series, List<Threshold> thresholds, AxisRange range) {
    public Graph {
        series = List.copyOf(series);
        thresholds = List.copyOf(thresholds);
    }

    /** What an upright axis shows. */
    public sealed interface AxisRange {
        /** The upright axis for the values of a graph. */
        ValueAxis scale(Graph graph);
    }

    /** Just the values that there are. */
    public record AsFound() implements AxisRange {
        @Override
        public ValueAxis scale(Graph graph) {
            return ValueAxis.around(graph);
        }
    }

    /** From one value to another, whatever there is. */
    public record FixedRange(double low, double high) implements AxisRange {
        @Override
        public ValueAxis scale(Graph graph) {
            return ValueAxis.between(low, high);
        }

        public FixedRange {
            if (!(low < high)) {
                throw new IllegalArgumentException("an axis from " + low + " to " + high);
            }
        }
    }
}

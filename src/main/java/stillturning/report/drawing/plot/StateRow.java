package stillturning.report.drawing.plot;

import java.util.List;

/** What something is doing over time, as a row of bars below the plot. */
public record StateRow(String name, List<RowSpan> spans) {
    public StateRow {
        spans = List.copyOf(spans);
    }

    /**
     * One state from a time (s) to another.
     *
     * @param label name of the state; written into the bar where it fits and into the legend
     */
    public record RowSpan(double fromSeconds, double toSeconds, String label, Fill fill) {
        public RowSpan {
            if (!(fromSeconds <= toSeconds)) {
                throw new IllegalArgumentException(
                        label + " lasts from " + fromSeconds + " s to " + toSeconds + " s");
            }
        }
    }

    /** How a bar is filled, told apart without colour. */
    public enum Fill {
        EMPTY,
        LIGHT,
        HATCHED,
        SOLID
    }
}

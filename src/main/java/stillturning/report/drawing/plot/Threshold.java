package stillturning.report.drawing.plot;

/** A value worth a line across the plot, in the unit of the upright axis. */
public record Threshold(String label, double value) {
    public Threshold {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("threshold " + label + " has no finite value");
        }
    }
}

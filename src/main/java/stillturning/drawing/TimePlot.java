package stillturning.drawing;

/**
 * Plots of values over time.
 *
 * <p>A story whose events lie milliseconds and minutes apart is drawn in up to three panels side by
 * side, each with an axis of its own that begins at the start: the shorter ones enlarge the
 * beginning of the last, which holds the whole story.
 */
public final class TimePlot {
    private TimePlot() {}

    /** Draws a plot. */
    public static Picture of(Plot plot) {
        return new PlotPainter(plot).picture();
    }
}

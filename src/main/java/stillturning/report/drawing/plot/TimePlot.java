package stillturning.report.drawing.plot;

import stillturning.report.drawing.Picture;

/**
 * Plots of values over time.
 *
 * <p>A story whose events lie milliseconds and minutes apart is drawn in up to four panels side by
 * side, each with an axis of its own: the last holds the whole story, the others enlarge its
 * beginning and where else much happens at once; they lie as shades in the panels that hold them.
 */
public final class TimePlot {
    private TimePlot() {}

    /** Draws a plot. */
    public static Picture of(Plot plot) {
        return sheet(plot).picture();
    }

    /** Draws a plot, and says which time lies where on it. */
    public static PlotSheet sheet(Plot plot) {
        return new PlotPainter(plot).sheet();
    }
}

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
    /** Width of a plot for paper and page. */
    public static final double BROAD = 960;

    private TimePlot() {}

    /** Draws a plot. */
    public static Picture of(Plot plot) {
        return sheet(plot, BROAD).picture();
    }

    /**
     * Draws a plot, and says which time lies where on it.
     *
     * @param width of the picture, whose letters keep their size
     */
    public static PlotSheet sheet(Plot plot, double width) {
        return new PlotPainter(plot, width).sheet();
    }
}

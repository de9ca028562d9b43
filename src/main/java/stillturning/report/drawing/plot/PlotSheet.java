package stillturning.report.drawing.plot;

import java.util.List;
import java.util.OptionalDouble;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;

/**
 * A plot that has been laid out: its picture, and which time lies where on it.
 *
 * @param panels from left to right
 */
public record PlotSheet(Picture picture, List<Panel> panels) {
    public PlotSheet {
        panels = List.copyOf(panels);
    }

    /**
     * A stretch of time side by side with others.
     *
     * @param box from the upper edge of its first graph to the lower edge of its last state row
     */
    public record Panel(Box box, double fromSeconds, double toSeconds) {

        /** Whether it shows a time. */
        public boolean shows(double seconds) {
            return seconds >= fromSeconds && seconds <= toSeconds;
        }

        /** How far from the left a time (s) lies on the picture. */
        public double x(double seconds) {
            double share = (seconds - fromSeconds) / (toSeconds - fromSeconds);
            return box.x() + share * box.width();
        }

        /** The time (s) at a place, at most at the panel's ends. */
        public double secondsAt(double x) {
            double share = Math.max(0, Math.min(1, (x - box.x()) / box.width()));
            return fromSeconds + share * (toSeconds - fromSeconds);
        }
    }

    /** The time (s) that a place on a panel stands for; none beside the panels. */
    public OptionalDouble secondsAt(Point at) {
        return panels.stream()
                .filter(panel -> panel.box().holds(at))
                .mapToDouble(panel -> panel.secondsAt(at.x()))
                .findFirst();
    }
}

package stillturning.report.drawing.plot;

import java.util.List;
import stillturning.report.drawing.Picture;

/**
 * Values over time before they have a shape: graphs above one another, and states below them, along
 * one axis of time.
 *
 * @param id prefix of the names inside the SVG, so that several pictures can share a page: letters,
 *     digits and hyphens, a letter first
 * @param untilSeconds end of the story (s), above 0; it begins at 0 or at the earliest sample
 */
public record Plot(
        String id,
        String title,
        double untilSeconds,
        List<Graph> graphs,
        List<EventMark> events,
        List<StateRow> states) {
    public Plot {
        Picture.checkId(id);
        if (!(untilSeconds > 0) || Double.isInfinite(untilSeconds)) {
            throw new IllegalArgumentException(
                    "plot ends at " + untilSeconds + " s, which is no finite time after 0");
        }
        graphs = List.copyOf(graphs);
        events = List.copyOf(events);
        states = List.copyOf(states);
    }
}

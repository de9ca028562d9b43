package stillturning.drawing;

import java.util.List;

/**
 * Values over time before they have a shape.
 *
 * @param id prefix of the names inside the SVG, so that several pictures can share a page: letters,
 *     digits and hyphens, a letter first
 * @param quantity what the upright axis counts, with its unit, such as "Voltage (V)"
 * @param untilSeconds end of the story (s), above 0; it begins at 0 or at the earliest sample
 */
public record Plot(
        String id,
        String title,
        String quantity,
        double untilSeconds,
        List<Series> series,
        List<EventMark> events,
        List<Threshold> thresholds,
        List<StateRow> states) {
    public Plot {
        Picture.checkId(id);
        if (!(untilSeconds > 0) || Double.isInfinite(untilSeconds)) {
            throw new IllegalArgumentException(
                    "plot ends at " + untilSeconds + " s, which is no finite time after 0");
        }
        series = List.copyOf(series);
        events = List.copyOf(events);
        thresholds = List.copyOf(thresholds);
        states = List.copyOf(states);
    }
}

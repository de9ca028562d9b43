package stillturning.desktop.viewmodel.offer;

import java.util.List;

/**
 * Drawings that are offered together.
 *
 * @param heading what they are for
 * @param offers the best first
 * @param notes what was looked at to find them, and what was not
 */
public record Offered(String heading, List<OfferedDrawing> offers, List<String> notes) {
    public Offered {
        offers = List.copyOf(offers);
        notes = List.copyOf(notes);
    }
}

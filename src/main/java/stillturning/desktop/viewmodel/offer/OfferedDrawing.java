package stillturning.desktop.viewmodel.offer;

import java.util.List;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;

/**
 * A drawing that the program offers.
 *
 * @param title what it is, in one sentence
 * @param about what it mends, costs and breaks, a sentence each
 * @param before the candidate that it was made from
 * @param drawn how it is drawn
 * @param name what its file would be called where that is free, without ending
 * @param text of its file
 */
public record OfferedDrawing(
        String title, List<String> about, Candidate before, Drawn drawn, String name, String text) {
    public OfferedDrawing {
        about = List.copyOf(about);
    }
}

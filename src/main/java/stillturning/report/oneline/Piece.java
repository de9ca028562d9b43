package stillturning.report.oneline;

import java.util.List;
import java.util.Optional;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Side;

/**
 * What becomes one symbol of a drawing.
 *
 * @param id unique in the drawing
 * @param part id of the part that it belongs to
 */
record Piece(
        String id, String part, Glyph glyph, String label, String detail, List<PiecePort> pins) {

    /**
     * A terminal of the part as a port of the symbol.
     *
     * @param side where it lies; empty if the way of the current decides
     * @param label text inside a box; may be empty
     * @param terminal what the part calls it
     */
    record PiecePort(int net, String port, Optional<Side> side, String label, String terminal) {
        boolean unlabelledInput() {
            return label.isEmpty() && side.filter(s -> s == Side.WEST).isPresent();
        }
    }

    Piece {
        pins = List.copyOf(pins);
    }

    /** The same piece with other words for its rating. */
    Piece detailed(String words) {
        return new Piece(id, part, glyph, label, words, pins);
    }
}

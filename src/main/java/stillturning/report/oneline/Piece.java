package stillturning.report.oneline;

import java.util.ArrayList;
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
record Piece(String id, String part, Glyph glyph, String label, String detail, List<Pin> pins) {

    /**
     * A terminal of the part as a port of the symbol.
     *
     * @param side where it lies; empty if the way of the current decides
     * @param label text inside a box; may be empty
     * @param terminal what the part calls it
     */
    record Pin(int net, String port, Optional<Side> side, String label, String terminal) {
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

    /** A piece in the making, pin by pin. */
    static final class Of {
        private final String id;
        private final String part;
        private final Glyph glyph;
        private final String label;
        private final String detail;
        private final List<Pin> pins = new ArrayList<>();

        Of(String id, String part, Glyph glyph, String label, String detail) {
            this.id = id;
            this.part = part;
            this.glyph = glyph;
            this.label = label;
            this.detail = detail;
        }

        Of pin(String port, int net, Side side) {
            return pin(port, net, side, "");
        }

        Of pin(String port, int net, Side side, String words) {
            pins.add(new Pin(net, port, Optional.of(side), words, port));
            return this;
        }

        Of free(String port, int net) {
            pins.add(new Pin(net, port, Optional.empty(), "", port));
            return this;
        }

        /** The pin that was given last, which the part calls otherwise. */
        Of called(String terminal) {
            Pin last = pins.remove(pins.size() - 1);
            pins.add(new Pin(last.net, last.port, last.side, last.label, terminal));
            return this;
        }

        Piece made() {
            return new Piece(id, part, glyph, label, detail, pins);
        }
    }
}

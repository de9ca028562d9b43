package stillturning.report.drawing.diagram;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import stillturning.report.drawing.MarkState;

/**
 * One symbol of a diagram.
 *
 * @param id unique within the diagram; given back on the drawn group
 * @param label name in words; may be empty
 * @param detail rating or the like, such as "20 Ah"; may be empty
 * @param ports where lines end; a bus and a shared ground spread the lines of one port along the
 *     side
 * @param group symbols of one group that lie together share a labelled frame
 */
public record DiagramSymbol(
        String id,
        Glyph glyph,
        String label,
        String detail,
        List<Port> ports,
        Optional<String> group,
        MarkState look) {
    public DiagramSymbol {
        ports = List.copyOf(ports);
        Set<String> names = new HashSet<>();
        for (Port port : ports) {
            if (!names.add(port.name())) {
                throw new IllegalArgumentException(id + " has two ports named " + port.name());
            }
        }
    }

    /** A symbol that belongs to no group and tells no state. */
    public DiagramSymbol(String id, Glyph glyph, String label, String detail, List<Port> ports) {
        this(id, glyph, label, detail, ports, Optional.empty(), MarkState.PLAIN);
    }

    /** The same symbol with other ports. */
    public DiagramSymbol with(List<Port> others) {
        return new DiagramSymbol(id, glyph, label, detail, others, group, look);
    }

    /** The same symbol in another state; the layout of a diagram does not depend on looks. */
    public DiagramSymbol looking(MarkState other) {
        return new DiagramSymbol(id, glyph, label, detail, ports, group, other);
    }

    /**
     * The same symbol drawn otherwise, such as a switch in its other position.
     *
     * @throws IllegalArgumentException if the other glyph takes another room
     */
    public DiagramSymbol drawnAs(Glyph other) {
        if (!other.takesTheRoomOf(glyph)) {
            throw new IllegalArgumentException(
                    id + " is laid out as " + glyph + "; " + other + " takes another room");
        }
        return new DiagramSymbol(id, other, label, detail, ports, group, look);
    }
}

package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/**
 * Room for a glyph that lies in a line: texts above and below it, or beside it at the end of a row.
 */
final class InlineShape {
    private static final double LEAD = 6;
    private static final double PORT_PITCH = 12;
    private static final double SHORT_TEXT = 92;
    private static final double LONG_TEXT = 116;

    private final Glyph glyph;
    private final List<Port> ports;
    private final List<SymbolShape.Caption> captions = new ArrayList<>();

    private InlineShape(DiagramSymbol symbol, List<Port> ports) {
        glyph = symbol.glyph();
        this.ports = ports;
    }

    /** The room for a symbol whose lines end at the given ports. */
    static SymbolShape of(DiagramSymbol symbol, List<Port> ports) {
        InlineShape shape = new InlineShape(symbol, ports);
        boolean endOfRow = shape.on(Side.EAST).isEmpty() && !shape.on(Side.WEST).isEmpty();
        return endOfRow ? shape.beside(symbol) : shape.stacked(symbol);
    }

    private List<Port> on(Side side) {
        return ports.stream().filter(port -> port.side() == side).toList();
    }

    private static List<String> lines(DiagramSymbol symbol) {
        String one = TextFitting.joined(" ", symbol.label(), symbol.detail());
        if (SymbolShape.widthOf(one, false) <= SHORT_TEXT) {
            return one.isEmpty() ? List.of() : List.of(one);
        }
        List<String> lines =
                new ArrayList<>(
                        TextFitting.wrapped(symbol.label(), SymbolShape.TEXT, false, LONG_TEXT, 2));
        lines.addAll(TextFitting.wrapped(symbol.detail(), SymbolShape.TEXT, false, LONG_TEXT, 1));
        return lines;
    }

    private SymbolShape beside(DiagramSymbol symbol) {
        List<String> names =
                TextFitting.wrapped(symbol.label(), SymbolShape.TEXT, true, LONG_TEXT, 2);
        List<String> details =
                TextFitting.wrapped(symbol.detail(), SymbolShape.TEXT, false, LONG_TEXT, 1);
        boolean oneLine = names.size() == 1 && !details.isEmpty() && fitsOneLine(names, details);
        int lines = oneLine ? 1 : names.size() + details.size();
        Point axis = new Point(glyph.width / 2 + LEAD, Math.max(glyph.axis, lines * 6));
        double left = axis.x() + glyph.width / 2 + 4 + SymbolShape.BADGE_ROOM;
        double first = axis.y() - lines * 6 + 9.5;
        for (String name : names) {
            double y = first + captions.size() * SymbolShape.TEXT_LINE;
            captions.add(new SymbolShape.Caption(name, left, y, Mark.Anchor.START, true));
        }
        for (String detail : details) {
            double x = oneLine ? captions.get(0).box().right() + 8 : left;
            double y = first + (oneLine ? 0 : captions.size()) * SymbolShape.TEXT_LINE;
            captions.add(new SymbolShape.Caption(detail, x, y, Mark.Anchor.START, false));
        }
        double height = Math.max(axis.y() + glyph.height - glyph.axis, axis.y() * 2);
        double right = captions.stream().mapToDouble(c -> c.box().right()).max().orElse(left);
        return shape(right + 2, height, axis, new Point(left - 6, first - 3.5));
    }

    private static boolean fitsOneLine(List<String> names, List<String> details) {
        return SymbolShape.widestOf(names, true) + 8 + SymbolShape.widestOf(details, false)
                <= LONG_TEXT;
    }

    private SymbolShape stacked(DiagramSymbol symbol) {
        List<String> lines = lines(symbol);
        boolean split = lines.size() > 1 && !symbol.detail().isBlank() && on(Side.SOUTH).isEmpty();
        int above = split ? lines.size() - 1 : lines.size();
        double top = Math.max(above * SymbolShape.TEXT_LINE, 9);
        double spread = PORT_PITCH * (Math.max(on(Side.WEST).size(), on(Side.EAST).size()) - 1) / 2;
        double axisY = top + Math.max(glyph.axis, spread);
        double below = axisY + Math.max(glyph.height - glyph.axis, spread);
        double height = below + (lines.size() - above) * SymbolShape.TEXT_LINE;

        double text = SymbolShape.widestOf(lines, false) + 2 * SymbolShape.BADGE_ROOM;
        boolean shifted = !on(Side.NORTH).isEmpty();
        double half = glyph.width / 2 + LEAD;
        double left = shifted ? half : Math.max(half, text / 2 + 1);
        double right = shifted ? Math.max(half, text + 6) : left;
        Mark.Anchor anchor = shifted ? Mark.Anchor.START : Mark.Anchor.MIDDLE;
        double x = left + (shifted ? 5 + SymbolShape.BADGE_ROOM : 0);
        for (int i = 0; i < lines.size(); i++) {
            double y = i < above ? 9.5 + i * SymbolShape.TEXT_LINE : below + 9.5;
            captions.add(new SymbolShape.Caption(lines.get(i), x, y, anchor, false));
        }
        double badgeX = captions.isEmpty() ? left - 8 : captions.get(0).box().x() - 6.5;
        return shape(left + right, height, new Point(left, axisY), new Point(badgeX, 6));
    }

    private SymbolShape shape(double width, double height, Point axis, Point badge) {
        Map<String, Point> places = new HashMap<>();
        for (Side side : Side.values()) {
            List<Port> here = on(side);
            for (int i = 0; i < here.size(); i++) {
                double shift = PORT_PITCH * (i - (here.size() - 1) / 2.0);
                double x = side.dx < 0 ? 0 : side.dx > 0 ? width : axis.x() + shift;
                double y = side.dy < 0 ? 0 : side.dy > 0 ? height : axis.y() + shift;
                places.put(here.get(i).name(), new Point(x, y));
            }
        }
        return new SymbolShape(
                width, height, axis, Map.copyOf(places), List.copyOf(captions), badge);
    }
}

package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Room for a box with its text inside; its ports lie in the rows of the diagram. */
final class BoxShape {
    private static final double PAD = 6;
    private static final double NARROWEST = 84;
    private static final double WIDEST_LOAD = 190;
    private static final double WIDEST_CONTROLLER = 150;

    private final DiagramSymbol symbol;
    private final List<SymbolShape.Caption> captions = new ArrayList<>();
    private final double westLabels;
    private final double eastLabels;

    private BoxShape(DiagramSymbol symbol) {
        this.symbol = symbol;
        westLabels = labels(Side.WEST);
        eastLabels = labels(Side.EAST);
    }

    /** Width that a load would like to have; the loads of a diagram all take the largest. */
    static double likedWidth(DiagramSymbol symbol) {
        BoxShape shape = new BoxShape(symbol);
        double texts =
                SymbolShape.widthOf(symbol.label(), true)
                        + (symbol.detail().isBlank()
                                ? 0
                                : 8 + SymbolShape.widthOf(symbol.detail(), false));
        double liked =
                texts + SymbolShape.BADGE_ROOM + 2 * PAD + shape.westLabels + shape.eastLabels;
        return Math.max(NARROWEST, Math.min(WIDEST_LOAD, liked));
    }

    static SymbolShape load(DiagramSymbol symbol, double width) {
        return new BoxShape(symbol).load(width);
    }

    static SymbolShape controller(DiagramSymbol symbol) {
        return new BoxShape(symbol).controller();
    }

    private List<Port> on(Side side) {
        return symbol.ports().stream().filter(port -> port.side() == side).toList();
    }

    private int rows() {
        return Math.max(on(Side.WEST).size(), on(Side.EAST).size());
    }

    private double labels(Side side) {
        double widest =
                on(side).stream()
                        .mapToDouble(p -> SymbolShape.widthOf(p.label(), false))
                        .max()
                        .orElse(0);
        return widest > 0 ? Math.min(widest, 90) + PAD : 0;
    }

    private SymbolShape load(double width) {
        double left = PAD + westLabels + SymbolShape.BADGE_ROOM;
        double room = width - left - PAD - eastLabels;
        double label = SymbolShape.widthOf(symbol.label(), true);
        double detail = SymbolShape.widthOf(symbol.detail(), false);
        boolean oneLine = label + (detail > 0 ? 8 + detail : 0) <= room;
        List<String> names = TextFitting.wrapped(symbol.label(), SymbolShape.TEXT, true, room, 2);
        List<String> details =
                TextFitting.wrapped(symbol.detail(), SymbolShape.TEXT, false, room, 1);
        int lines = oneLine ? 1 : names.size() + details.size();
        double height =
                Math.max(
                        Math.max(22, lines * SymbolShape.TEXT_LINE + 6),
                        (rows() - 1) * SymbolShape.ROW + 22);
        double first = height / 2 - lines * SymbolShape.TEXT_LINE / 2 + 9.5;
        double next = first;
        for (String name : names) {
            captions.add(new SymbolShape.Caption(name, left, next, Mark.Anchor.START, true));
            next += SymbolShape.TEXT_LINE;
        }
        for (String words : details) {
            double x = oneLine ? left + room : left;
            Mark.Anchor anchor = oneLine ? Mark.Anchor.END : Mark.Anchor.START;
            captions.add(new SymbolShape.Caption(words, x, oneLine ? first : next, anchor, false));
        }
        Point badge = new Point(left - 6, first - 3.5);
        return shape(width, height, height / 2 - (rows() - 1) * SymbolShape.ROW / 2, badge);
    }

    private SymbolShape controller() {
        double text = TextFitting.joined(" ", symbol.label(), symbol.detail()).isEmpty() ? 0 : 1;
        double names = SymbolShape.widthOf(symbol.label(), true);
        double liked = Math.max(names, SymbolShape.widthOf(symbol.detail(), false)) * text;
        double width =
                Math.max(
                        Math.min(liked, WIDEST_CONTROLLER) + SymbolShape.BADGE_ROOM + 2 * PAD,
                        westLabels + eastLabels + 3 * PAD);
        width = Math.max(NARROWEST, width);
        double room = width - 2 * PAD - SymbolShape.BADGE_ROOM;
        double y = 12;
        for (String name : TextFitting.wrapped(symbol.label(), SymbolShape.TEXT, true, room, 3)) {
            captions.add(caption(name, y, true));
            y += SymbolShape.TEXT_LINE;
        }
        for (String words :
                TextFitting.wrapped(symbol.detail(), SymbolShape.TEXT, false, room, 2)) {
            captions.add(caption(words, y, false));
            y += SymbolShape.TEXT_LINE;
        }
        double firstRow = y + 3;
        double height = rows() == 0 ? y : firstRow + (rows() - 1) * SymbolShape.ROW + 14;
        return shape(width, height, firstRow, new Point(PAD + 4.5, 8.5));
    }

    private static SymbolShape.Caption caption(String words, double y, boolean bold) {
        return new SymbolShape.Caption(
                words, PAD + SymbolShape.BADGE_ROOM, y, Mark.Anchor.START, bold);
    }

    private SymbolShape shape(double width, double height, double firstRow, Point badge) {
        Map<String, Point> places = new HashMap<>();
        for (Side side : Side.values()) {
            List<Port> here = on(side);
            // whole units: the placement of nodes knows no others, and a half would be a kink
            double centring = Math.floor((rows() - here.size()) * SymbolShape.ROW / 2);
            for (int i = 0; i < here.size(); i++) {
                double along = (i + 1.0) / (here.size() + 1);
                Point place =
                        side.horizontal()
                                ? new Point(
                                        side.dx < 0 ? 0 : width,
                                        firstRow + i * SymbolShape.ROW + centring)
                                : new Point(width * along, side.dy < 0 ? 0 : height);
                places.put(here.get(i).name(), place);
                label(here.get(i), place);
            }
        }
        return new SymbolShape(
                width,
                height,
                new Point(width / 2, height / 2),
                Map.copyOf(places),
                List.copyOf(captions),
                badge);
    }

    private void label(Port port, Point place) {
        if (port.side().horizontal() && !port.label().isBlank()) {
            captions.add(
                    new SymbolShape.Caption(
                            TextFitting.fitted(port.label(), SymbolShape.TEXT, false, 90),
                            place.x() - port.side().dx * 4,
                            place.y() + 3.6,
                            port.side() == Side.WEST ? Mark.Anchor.START : Mark.Anchor.END,
                            false));
        }
    }
}

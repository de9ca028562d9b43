package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Colours;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Stroke;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.TextWidths;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Draws a diagram that has its places. */
final class DiagramPainter {
    private static final double MARGIN = Geometry.MARGIN;
    private static final double WIRE = 1.3;
    private static final double LEGEND = 24;
    private static final double LOOSE_END = 2.6;
    private static final String FRAME_COLOUR = Colours.MUTED.light;

    private final Diagram diagram;
    private final PlacedDiagram placed;
    private final Geometry geometry;
    private final List<Mark> marks = new ArrayList<>();

    DiagramPainter(Diagram diagram, PlacedDiagram placed) {
        this.diagram = diagram;
        this.placed = placed;
        geometry = new Geometry(diagram, placed);
    }

    Picture picture() {
        paintTitle();
        placed.frames().forEach(this::paintFrame);
        placed.routes().forEach(this::paintRoute);
        placed.symbols().forEach(this::paintSymbol);
        double bottom = geometry.bottom();
        double legendRight = paintLegend(bottom);
        double width =
                Math.max(
                        placed.width() + 2 * MARGIN,
                        Math.max(
                                legendRight,
                                TextWidths.of(diagram.title(), Mark.Type.TITLE_SIZE, true)
                                        + 2 * MARGIN));
        return new Picture(
                diagram.id(),
                diagram.title(),
                "One-line diagram with %d symbols and %d lines"
                        .formatted(diagram.symbols().size(), diagram.lines().size()),
                Math.ceil(width),
                Math.ceil(bottom + (legendRight > 0 ? LEGEND : 0)),
                marks);
    }

    private void paintTitle() {
        if (!diagram.title().isBlank()) {
            marks.add(
                    new Mark.Text(
                            diagram.title(),
                            MARGIN,
                            MARGIN + Mark.Type.TITLE_SIZE - 2,
                            Mark.Anchor.START,
                            new Mark.Type(Mark.Type.TITLE_SIZE, true, MarkState.PLAIN.colour())));
        }
    }

    private void paintFrame(PlacedDiagram.GroupFrame frame) {
        Box box = geometry.moved(frame.box());
        marks.add(
                new Outline(new Point(box.x(), box.y()))
                        .rectangle(0, 0, box.width(), box.height())
                        .with(Stroke.line(0.8, FRAME_COLOUR).dashed(List.of(6.0, 3.0, 1.0, 3.0))));
        marks.add(
                new Mark.Text(
                        frame.name(),
                        box.x() + 8,
                        box.y() + 13,
                        Mark.Anchor.START,
                        new Mark.Type(SymbolShape.TEXT, true, FRAME_COLOUR)));
    }

    private void paintRoute(PlacedDiagram.PlacedLine route) {
        MarkState look = route.line().look();
        Outline outline = new Outline(new Point(0, 0));
        boolean first = true;
        for (Point at : geometry.course(route)) {
            outline = first ? outline.move(at.x(), at.y()) : outline.line(at.x(), at.y());
            first = false;
        }
        List<Mark> drawn = new ArrayList<>();
        drawn.add(outline.with(pen(look)));
        for (Point joint : route.joints()) {
            drawn.add(
                    new Outline(geometry.moved(joint))
                            .circle(0, 0, 2.3)
                            .with(Stroke.solid(look.colour())));
        }
        for (SymbolShape.Caption label : route.labels()) {
            drawn.add(text(label, new Point(0, 0), look.colour()));
        }
        marks.add(new Mark.PartMarks("line " + route.number(), title(route.line()), drawn));
    }

    private static String title(DiagramLine line) {
        return TextFitting.joined(
                " · ",
                line.fromSymbol() + " → " + line.toSymbol(),
                line.label(),
                line.look().words());
    }

    private static String title(DiagramSymbol symbol) {
        String name = symbol.label().isBlank() ? symbol.id() : symbol.label();
        return TextFitting.joined(" · ", name, symbol.detail(), symbol.look().words());
    }

    private Mark text(SymbolShape.Caption caption, Point corner, String colour) {
        Point at = geometry.moved(new Point(caption.x() + corner.x(), caption.y() + corner.y()));
        return new Mark.Text(
                caption.words(),
                at.x(),
                at.y(),
                caption.anchor(),
                new Mark.Type(SymbolShape.TEXT, caption.bold(), colour));
    }

    private void paintSymbol(PlacedDiagram.PlacedSymbol symbol) {
        DiagramSymbol drawn = symbol.sized().symbol();
        SymbolShape shape = symbol.sized().shape();
        Point corner = symbol.corner();
        String colour = drawn.look().colour();
        List<Mark> inside = new ArrayList<>();
        switch (drawn.glyph().form) {
            case INLINE -> paintInline(inside, symbol);
            case BOX ->
                    inside.add(
                            new Outline(geometry.moved(corner))
                                    .rectangle(0, 0, shape.width(), shape.height())
                                    .with(
                                            Stroke.line(1.3, colour)
                                                    .filled(Stroke.PAPER)
                                                    .dashed(boxDashes(drawn.look()))));
            case BAR, GROUND -> paintBar(inside, symbol);
        }
        shape.captions().forEach(caption -> inside.add(text(caption, corner, colour)));
        paintLooseEnds(inside, symbol);
        Point badge = geometry.moved(shape.badge().movedBy(corner.x(), corner.y()));
        inside.addAll(new GlyphStrokes(badge, colour).badge(drawn.look()));
        marks.add(new Mark.PartMarks(drawn.id(), title(drawn), inside));
        symbol.sized().stubs().forEach(stub -> paintStub(symbol, stub));
    }

    private void paintLooseEnds(List<Mark> inside, PlacedDiagram.PlacedSymbol symbol) {
        DiagramSymbol drawn = symbol.sized().symbol();
        for (Port port : drawn.ports()) {
            Point end = symbol.sized().shape().ports().get(port.name());
            if (port.loose() && end != null) {
                Point at = geometry.moved(end.movedBy(symbol.corner().x(), symbol.corner().y()));
                Stroke pen = Stroke.line(1, drawn.look().colour()).filled(Stroke.PAPER);
                inside.add(new Outline(at).circle(0, 0, LOOSE_END).with(pen));
            }
        }
    }

    private static List<Double> boxDashes(MarkState look) {
        return look == MarkState.LIVE ? List.of() : look.dashes();
    }

    private void paintInline(List<Mark> inside, PlacedDiagram.PlacedSymbol symbol) {
        SizedSymbol sized = symbol.sized();
        Glyph glyph = sized.symbol().glyph();
        Point corner = symbol.corner();
        Point axis = geometry.moved(sized.shape().axis().movedBy(corner.x(), corner.y()));
        Outline leads = new Outline(new Point(0, 0));
        for (Port port : sized.symbol().ports()) {
            Point end = sized.shape().ports().get(port.name());
            if (end != null) {
                lead(
                        leads,
                        glyph,
                        port.side(),
                        axis,
                        geometry.moved(end.movedBy(corner.x(), corner.y())));
            }
        }
        String colour = sized.symbol().look().colour();
        inside.add(leads.with(Stroke.line(WIRE, colour)));
        boolean mirrored =
                glyph == Glyph.BATTERY
                        && sized.symbol().ports().stream()
                                .filter(p -> sized.shape().ports().containsKey(p.name()))
                                .noneMatch(p -> p.side() == Side.EAST);
        inside.addAll(new GlyphStrokes(axis, colour).of(glyph, mirrored));
    }

    /** From the port straight to the glyph; several ports on a side meet before it. */
    private static void lead(Outline leads, Glyph glyph, Side side, Point axis, Point end) {
        if (side.horizontal()) {
            double x = axis.x() + side.dx * glyph.width / 2;
            leads.move(end.x(), end.y()).line(x + side.dx * 3, end.y());
            leads.line(x + side.dx * 3, axis.y()).line(x, axis.y());
            return;
        }
        double edge = side == Side.NORTH ? -glyph.axis : glyph.height - glyph.axis;
        leads.move(end.x(), end.y()).line(end.x(), axis.y() + edge);
    }

    private void paintBar(List<Mark> inside, PlacedDiagram.PlacedSymbol symbol) {
        DiagramSymbol drawn = symbol.sized().symbol();
        double axisX = symbol.box().x() + symbol.sized().shape().axis().x();
        double from = Geometry.topOfBar(symbol);
        double to = Geometry.bottomOfBar(symbol);
        String colour = drawn.look().colour();
        double thick = drawn.glyph() == Glyph.BUS ? Glyph.BUS.width : 3;
        inside.add(
                new Outline(geometry.moved(new Point(axisX, from)))
                        .rectangle(-thick / 2, 0, thick, to - from)
                        .with(Stroke.solid(colour)));
        if (drawn.glyph().form == Glyph.GlyphForm.GROUND) {
            Point foot = geometry.moved(new Point(axisX, to));
            inside.add(new Outline(foot).segment(0, 0, 0, 8).with(Stroke.line(WIRE, colour)));
            inside.addAll(new GlyphStrokes(foot, colour).ground(drawn.glyph(), Side.SOUTH));
        }
    }

    private void paintStub(PlacedDiagram.PlacedSymbol symbol, GroundStub stub) {
        Point corner = symbol.corner();
        Point port = symbol.sized().portOnShape(stub).movedBy(corner.x(), corner.y());
        DiagramLine line = diagram.lines().get(stub.line());
        String colour = stub.ground().look().colour();
        Side side = stub.ownerPort().side();
        Mark wire =
                new Outline(geometry.moved(port))
                        .segment(0, 0, side.dx * 8, side.dy * 8)
                        .with(pen(line.look()));
        List<Mark> sign =
                new ArrayList<>(
                        new GlyphStrokes(geometry.moved(port), colour)
                                .ground(stub.ground().glyph(), side));
        if (!stub.words().isEmpty()) {
            sign.add(text(stub.caption(port), new Point(0, 0), colour));
        }
        marks.add(new Mark.PartMarks("line " + stub.line(), title(line), List.of(wire)));
        marks.add(new Mark.PartMarks(stub.ground().id(), title(stub.ground()), sign));
    }

    private static Stroke pen(MarkState look) {
        return Stroke.line(WIRE, look.colour()).dashed(look.dashes());
    }

    /** Explains the looks that occur; returns its right edge, 0 if there is nothing to explain. */
    private double paintLegend(double y) {
        Set<MarkState> seen = EnumSet.noneOf(MarkState.class);
        diagram.symbols().forEach(symbol -> seen.add(symbol.look()));
        diagram.lines().forEach(line -> seen.add(line.look()));
        double x = MARGIN;
        for (MarkState look : seen) {
            if (look.hasBadge()) {
                marks.addAll(new GlyphStrokes(new Point(x + 4, y + 6), look.colour()).badge(look));
                marks.add(
                        new Outline(new Point(x + 14, y + 6)).segment(0, 0, 34, 0).with(pen(look)));
                marks.add(
                        new Mark.Text(
                                look.words(),
                                x + 54,
                                y + 9.6,
                                Mark.Anchor.START,
                                new Mark.Type(SymbolShape.TEXT, false, look.colour())));
                x += 54 + SymbolShape.widthOf(look.words(), false) + 22;
            }
        }
        return x > MARGIN ? x : 0;
    }
}

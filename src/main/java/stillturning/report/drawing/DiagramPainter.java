package stillturning.report.drawing;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/** Draws a diagram that has its places. */
final class DiagramPainter {
    private static final double MARGIN = Geometry.MARGIN;
    static final double TITLE_SIZE = 15;
    private static final double WIRE = 1.3;
    private static final double LEGEND = 24;
    private static final double LOOSE_END = 2.6;
    private static final String FRAME_COLOUR = Ink.MUTED.light;

    private final Diagram diagram;
    private final Placed placed;
    private final Geometry geometry;
    private final List<Mark> marks = new ArrayList<>();

    DiagramPainter(Diagram diagram, Placed placed) {
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
                                TextWidths.of(diagram.title(), TITLE_SIZE, true) + 2 * MARGIN));
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
                            MARGIN + TITLE_SIZE - 2,
                            Mark.Anchor.START,
                            new Mark.Type(TITLE_SIZE, true, Look.PLAIN.colour())));
        }
    }

    private void paintFrame(Placed.Frame frame) {
        Box box = geometry.moved(frame.box());
        marks.add(
                new Outline(new At(box.x(), box.y()))
                        .rectangle(0, 0, box.width(), box.height())
                        .with(Pen.line(0.8, FRAME_COLOUR).dashed(List.of(6.0, 3.0, 1.0, 3.0))));
        marks.add(
                new Mark.Text(
                        frame.name(),
                        box.x() + 8,
                        box.y() + 13,
                        Mark.Anchor.START,
                        new Mark.Type(Shape.TEXT, true, FRAME_COLOUR)));
    }

    private void paintRoute(Placed.Route route) {
        Look look = route.line().look();
        Outline outline = new Outline(new At(0, 0));
        boolean first = true;
        for (At at : geometry.course(route)) {
            outline = first ? outline.move(at.x(), at.y()) : outline.line(at.x(), at.y());
            first = false;
        }
        List<Mark> drawn = new ArrayList<>();
        drawn.add(outline.with(pen(look)));
        for (At joint : route.joints()) {
            drawn.add(
                    new Outline(geometry.moved(joint))
                            .circle(0, 0, 2.3)
                            .with(Pen.solid(look.colour())));
        }
        for (Shape.Caption label : route.labels()) {
            drawn.add(text(label, new At(0, 0), look.colour()));
        }
        marks.add(new Mark.Part("line " + route.number(), title(route.line()), drawn));
    }

    private static String title(Line line) {
        return Wording.joined(
                " · ",
                line.fromSymbol() + " → " + line.toSymbol(),
                line.label(),
                line.look().words());
    }

    private static String title(Symbol symbol) {
        String name = symbol.label().isBlank() ? symbol.id() : symbol.label();
        return Wording.joined(" · ", name, symbol.detail(), symbol.look().words());
    }

    private Mark text(Shape.Caption caption, At corner, String colour) {
        At at = geometry.moved(new At(caption.x() + corner.x(), caption.y() + corner.y()));
        return new Mark.Text(
                caption.words(),
                at.x(),
                at.y(),
                caption.anchor(),
                new Mark.Type(Shape.TEXT, caption.bold(), colour));
    }

    private void paintSymbol(Placed.PlacedSymbol symbol) {
        Symbol drawn = symbol.sized().symbol();
        Shape shape = symbol.sized().shape();
        At corner = symbol.corner();
        String colour = drawn.look().colour();
        List<Mark> inside = new ArrayList<>();
        switch (drawn.glyph().form) {
            case INLINE -> paintInline(inside, symbol);
            case BOX ->
                    inside.add(
                            new Outline(geometry.moved(corner))
                                    .rectangle(0, 0, shape.width(), shape.height())
                                    .with(
                                            Pen.line(1.3, colour)
                                                    .filled(Pen.PAPER)
                                                    .dashed(boxDashes(drawn.look()))));
            case BAR, GROUND -> paintBar(inside, symbol);
        }
        shape.captions().forEach(caption -> inside.add(text(caption, corner, colour)));
        paintLooseEnds(inside, symbol);
        At badge = geometry.moved(shape.badge().movedBy(corner.x(), corner.y()));
        inside.addAll(new GlyphStrokes(badge, colour).badge(drawn.look()));
        marks.add(new Mark.Part(drawn.id(), title(drawn), inside));
        symbol.sized().stubs().forEach(stub -> paintStub(symbol, stub));
    }

    private void paintLooseEnds(List<Mark> inside, Placed.PlacedSymbol symbol) {
        Symbol drawn = symbol.sized().symbol();
        for (Port port : drawn.ports()) {
            At end = symbol.sized().shape().ports().get(port.name());
            if (port.loose() && end != null) {
                At at = geometry.moved(end.movedBy(symbol.corner().x(), symbol.corner().y()));
                Pen pen = Pen.line(1, drawn.look().colour()).filled(Pen.PAPER);
                inside.add(new Outline(at).circle(0, 0, LOOSE_END).with(pen));
            }
        }
    }

    private static List<Double> boxDashes(Look look) {
        return look == Look.LIVE ? List.of() : look.dashes();
    }

    private void paintInline(List<Mark> inside, Placed.PlacedSymbol symbol) {
        Sized sized = symbol.sized();
        Glyph glyph = sized.symbol().glyph();
        At corner = symbol.corner();
        At axis = geometry.moved(sized.shape().axis().movedBy(corner.x(), corner.y()));
        Outline leads = new Outline(new At(0, 0));
        for (Port port : sized.symbol().ports()) {
            At end = sized.shape().ports().get(port.name());
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
        inside.add(leads.with(Pen.line(WIRE, colour)));
        boolean mirrored =
                glyph == Glyph.BATTERY
                        && sized.symbol().ports().stream()
                                .filter(p -> sized.shape().ports().containsKey(p.name()))
                                .noneMatch(p -> p.side() == Side.EAST);
        inside.addAll(new GlyphStrokes(axis, colour).of(glyph, mirrored));
    }

    /** From the port straight to the glyph; several ports on a side meet before it. */
    private static void lead(Outline leads, Glyph glyph, Side side, At axis, At end) {
        if (side.horizontal()) {
            double x = axis.x() + side.dx * glyph.width / 2;
            leads.move(end.x(), end.y()).line(x + side.dx * 3, end.y());
            leads.line(x + side.dx * 3, axis.y()).line(x, axis.y());
            return;
        }
        double edge = side == Side.NORTH ? -glyph.axis : glyph.height - glyph.axis;
        leads.move(end.x(), end.y()).line(end.x(), axis.y() + edge);
    }

    private void paintBar(List<Mark> inside, Placed.PlacedSymbol symbol) {
        Symbol drawn = symbol.sized().symbol();
        double axisX = symbol.box().x() + symbol.sized().shape().axis().x();
        double from = Geometry.topOfBar(symbol);
        double to = Geometry.bottomOfBar(symbol);
        String colour = drawn.look().colour();
        double thick = drawn.glyph() == Glyph.BUS ? Glyph.BUS.width : 3;
        inside.add(
                new Outline(geometry.moved(new At(axisX, from)))
                        .rectangle(-thick / 2, 0, thick, to - from)
                        .with(Pen.solid(colour)));
        if (drawn.glyph().form == Glyph.Form.GROUND) {
            At foot = geometry.moved(new At(axisX, to));
            inside.add(new Outline(foot).segment(0, 0, 0, 8).with(Pen.line(WIRE, colour)));
            inside.addAll(new GlyphStrokes(foot, colour).ground(drawn.glyph(), Side.SOUTH));
        }
    }

    private void paintStub(Placed.PlacedSymbol symbol, Stub stub) {
        At corner = symbol.corner();
        At port = symbol.sized().portOnShape(stub).movedBy(corner.x(), corner.y());
        Line line = diagram.lines().get(stub.line());
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
            sign.add(text(stub.caption(port), new At(0, 0), colour));
        }
        marks.add(new Mark.Part("line " + stub.line(), title(line), List.of(wire)));
        marks.add(new Mark.Part(stub.ground().id(), title(stub.ground()), sign));
    }

    private static Pen pen(Look look) {
        return Pen.line(WIRE, look.colour()).dashed(look.dashes());
    }

    /** Explains the looks that occur; returns its right edge, 0 if there is nothing to explain. */
    private double paintLegend(double y) {
        Set<Look> seen = EnumSet.noneOf(Look.class);
        diagram.symbols().forEach(symbol -> seen.add(symbol.look()));
        diagram.lines().forEach(line -> seen.add(line.look()));
        double x = MARGIN;
        for (Look look : seen) {
            if (look.hasBadge()) {
                marks.addAll(new GlyphStrokes(new At(x + 4, y + 6), look.colour()).badge(look));
                marks.add(new Outline(new At(x + 14, y + 6)).segment(0, 0, 34, 0).with(pen(look)));
                marks.add(
                        new Mark.Text(
                                look.words(),
                                x + 54,
                                y + 9.6,
                                Mark.Anchor.START,
                                new Mark.Type(Shape.TEXT, false, look.colour())));
                x += 54 + Shape.widthOf(look.words(), false) + 22;
            }
        }
        return x > MARGIN ? x : 0;
    }
}

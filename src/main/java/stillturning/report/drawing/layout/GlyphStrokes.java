package stillturning.report.drawing.layout;

import java.util.List;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Outline;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.Stroke;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Side;

/** The strokes of each glyph around the middle of the line that runs through it. */
final class GlyphStrokes {
    private static final double STROKE = 1.4;

    private final Point at;
    private final String colour;
    private final Stroke pen;
    private final Stroke solid;
    private final Stroke body;

    GlyphStrokes(Point at, String colour) {
        this.at = at;
        this.colour = colour;
        pen = Stroke.line(STROKE, colour);
        solid = Stroke.solid(colour);
        body = pen.filled(Stroke.PAPER);
    }

    /**
     * Strokes of a glyph that lies in a line.
     *
     * @param mirrored whether west and east change places, for a battery
     */
    List<Mark> of(Glyph glyph, boolean mirrored) {
        return switch (glyph) {
            case BATTERY -> battery(mirrored ? -1 : 1);
            case ALTERNATOR -> machine(15, "G", -1);
            case MOTOR -> machine(12, "M", 1);
            case STARTER -> starter();
            case LAMP -> lamp();
            case FUSE -> fuse();
            case FUSE_BLOWN -> blownFuse();
            case BREAKER_CLOSED -> closedBreaker();
            case BREAKER_OPEN -> List.of(cross(-11), blade(-11), leads(-15, -11, 11, 15));
            case SWITCH_CLOSED -> List.of(leads(-15, -9, -9, 9), leads(9, 15, 9, 15), ends());
            case SWITCH_OPEN -> List.of(leads(-15, -11, 11, 15), blade(-9), ends());
            case CONTACTOR_CLOSED ->
                    contactor(
                            at().segment(-15, 0, 15, 0)
                                    .move(-11, -3.5)
                                    .halfTurnTo(-11, 3.5, 3.5)
                                    .with(pen),
                            0);
            case CONTACTOR_OPEN -> contactor(openContact(), -4.6);
            case DIODE -> diode();
            case CONNECTOR -> connector();
            case SHUNT -> shunt();
            case CONVERTER -> converter();
            case BUS, LOAD, CONTROLLER, EARTH, FRAME -> List.of();
        };
    }

    private Outline at() {
        return new Outline(at);
    }

    private Mark leads(double from, double to, double from2, double to2) {
        return at().segment(from, 0, to, 0).segment(from2, 0, to2, 0).with(pen);
    }

    private Mark cross(double x) {
        return at().segment(x - 3, -3, x + 3, 3).segment(x - 3, 3, x + 3, -3).with(pen);
    }

    private Mark blade(double tip) {
        return at().segment(11, 0, tip, -8).with(pen);
    }

    private Mark ends() {
        return at().circle(-11, 0, 2).circle(11, 0, 2).with(body);
    }

    private Mark letter(String letter, double size, double baseline) {
        return new Mark.Text(
                letter,
                at.x(),
                at.y() + baseline,
                Mark.Anchor.MIDDLE,
                new Mark.Type(size, true, colour));
    }

    private List<Mark> battery(int east) {
        return List.of(
                at().segment(-12 * east, 0, -6 * east, 0)
                        .segment(6 * east, 0, 12 * east, 0)
                        .segment(6 * east, -11, 6 * east, 11)
                        .segment(-2 * east, -11, -2 * east, 11)
                        .segment(10.5 * east, -10, 10.5 * east, -5)
                        .segment(10.5 * east - 2.5, -7.5, 10.5 * east + 2.5, -7.5)
                        .with(pen),
                at().segment(2 * east, -5.5, 2 * east, 5.5)
                        .segment(-6 * east, -5.5, -6 * east, 5.5)
                        .with(Stroke.line(3, colour)));
    }

    private List<Mark> machine(double radius, String letter, double lift) {
        double below = radius * 0.55;
        return List.of(
                at().circle(0, 0, radius - 0.7).with(body),
                letter(letter, 11, lift + 2),
                direct(0, below));
    }

    /** The sign for direct current: an unbroken line over a broken one. */
    private Mark direct(double x, double y) {
        return at().segment(x - 4, y - 1, x + 4, y - 1)
                .segment(x - 4, y + 1.5, x - 2, y + 1.5)
                .segment(x - 1, y + 1.5, x + 1, y + 1.5)
                .segment(x + 2, y + 1.5, x + 4, y + 1.5)
                .with(Stroke.line(0.9, colour));
    }

    private List<Mark> starter() {
        return List.of(at().circle(0, 0, 14.3).with(body), letter("MS", 10.5, 1.5), direct(0, 7.5));
    }

    private List<Mark> lamp() {
        double d = 9.3 * Math.sqrt(0.5);
        return List.of(
                at().circle(0, 0, 9.3).with(body),
                at().segment(-d, -d, d, d).segment(-d, d, d, -d).with(pen));
    }

    private List<Mark> fuse() {
        return List.of(
                at().rectangle(-10, -4.3, 20, 8.6).with(body),
                at().segment(-14, 0, 14, 0).with(pen));
    }

    private List<Mark> blownFuse() {
        return List.of(
                at().rectangle(-10, -4.3, 20, 8.6).with(body),
                leads(-14, -4, 4, 14),
                at().segment(-4, 0, -2.5, -2.5).segment(4, 0, 2.5, 2.5).with(pen));
    }

    private List<Mark> closedBreaker() {
        return List.of(
                cross(-11),
                at().move(-15, 0)
                        .line(-4, 0)
                        .line(-4, -5)
                        .line(4, -5)
                        .line(4, 0)
                        .line(15, 0)
                        .with(pen));
    }

    private Mark openContact() {
        return at().segment(-15, 0, -11, 0)
                .segment(11, 0, 15, 0)
                .move(-11, -3.5)
                .halfTurnTo(-11, 3.5, 3.5)
                .segment(11, 0, -8, -8)
                .with(pen);
    }

    private List<Mark> contactor(Mark contact, double linkFrom) {
        return List.of(
                contact,
                at().segment(0, linkFrom, 0, 13).with(pen.dashed(List.of(2.0, 1.5))),
                at().rectangle(-9, 13, 18, 10).with(body),
                at().segment(-4, 23, 4, 13).with(Stroke.line(0.9, colour)));
    }

    private List<Mark> diode() {
        return List.of(
                at().segment(-12, 0, 12, 0).segment(6, -5.5, 6, 5.5).with(pen),
                at().move(-5, -5.5).line(6, 0).line(-5, 5.5).close().with(solid));
    }

    private List<Mark> connector() {
        return List.of(
                at().move(2, 5)
                        .halfTurnTo(2, -5, 5)
                        .segment(-12, 0, -3, 0)
                        .segment(9, 0, 12, 0)
                        .with(pen),
                at().rectangle(0, -2, 9, 4).with(solid));
    }

    private List<Mark> shunt() {
        return List.of(
                leads(-14, -10, 10, 14),
                at().rectangle(-10, -4, 20, 8).with(body),
                at().segment(-6, -7, -6, -4).segment(6, -7, 6, -4).with(pen));
    }

    private List<Mark> converter() {
        return List.of(
                at().rectangle(-13.3, -13.3, 26.6, 26.6).with(body),
                at().segment(-13.3, 13.3, 13.3, -13.3).with(pen),
                direct(-6, -6),
                direct(6, 6.5));
    }

    /** A ground sign at the end of a stub that leads from the middle to one side. */
    List<Mark> ground(Glyph glyph, Side side) {
        Outline signs = at();
        if (glyph == Glyph.EARTH) {
            across(signs, side, 8, 7);
            across(signs, side, 11, 4.5);
            across(signs, side, 14, 2);
        } else {
            across(signs, side, 8, 7);
            for (double along = -6; along <= 6; along += 4) {
                signs.move(place(8, along, side).x(), place(8, along, side).y());
                Point end = place(13, along - 3, side);
                signs.line(end.x(), end.y());
            }
        }
        return List.of(signs.with(pen));
    }

    private static void across(Outline signs, Side side, double distance, double half) {
        Point from = place(distance, -half, side);
        Point to = place(distance, half, side);
        signs.segment(from.x(), from.y(), to.x(), to.y());
    }

    private static Point place(double distance, double across, Side side) {
        return new Point(
                side.dx * distance - side.dy * across, side.dy * distance + side.dx * across);
    }

    /** A small badge that tells a look apart without colour. */
    List<Mark> badge(MarkState look) {
        return switch (look) {
            case PLAIN, LIVE -> List.of();
            case DARK -> List.of(at().circle(0, 0, 3.6).segment(-2.6, 2.6, 2.6, -2.6).with(pen));
            case STARVED ->
                    List.of(at().move(-4, -3.6).line(0, 4).line(4, -3.6).close().with(body));
            case OVER_VOLTAGE ->
                    List.of(at().move(-4, 3.6).line(0, -4).line(4, 3.6).close().with(solid));
            case ON_BACKUP ->
                    List.of(
                            at().rectangle(-3.6, -3.6, 7.2, 7.2).with(body),
                            at().circle(0, 0, 1.5).with(solid));
            case FAILED ->
                    List.of(
                            at().segment(-3.6, -3.6, 3.6, 3.6)
                                    .segment(-3.6, 3.6, 3.6, -3.6)
                                    .with(Stroke.line(2.2, colour)));
        };
    }
}

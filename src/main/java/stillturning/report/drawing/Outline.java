package stillturning.report.drawing;

/** Path data around a place. */
public final class Outline {
    private final StringBuilder data = new StringBuilder();
    private final Point origin;

    public Outline(Point origin) {
        this.origin = origin;
    }

    public Outline move(double x, double y) {
        return point('M', x, y);
    }

    public Outline line(double x, double y) {
        return point('L', x, y);
    }

    public Outline segment(double x1, double y1, double x2, double y2) {
        return move(x1, y1).line(x2, y2);
    }

    public Outline close() {
        data.append('Z');
        return this;
    }

    public Outline rectangle(double x, double y, double width, double height) {
        return move(x, y)
                .line(x + width, y)
                .line(x + width, y + height)
                .line(x, y + height)
                .close();
    }

    public Outline circle(double x, double y, double radius) {
        return move(x - radius, y)
                .halfTurnTo(x + radius, y, radius)
                .halfTurnTo(x - radius, y, radius)
                .close();
    }

    /** Half a circle from the present point, clockwise on the screen. */
    public Outline halfTurnTo(double x, double y, double radius) {
        String r = SvgWriter.number(radius);
        data.append('A').append(r).append(' ').append(r).append(" 0 0 1 ");
        data.append(SvgWriter.number(origin.x() + x)).append(' ');
        data.append(SvgWriter.number(origin.y() + y));
        return this;
    }

    private Outline point(char letter, double x, double y) {
        data.append(letter)
                .append(SvgWriter.number(origin.x() + x))
                .append(' ')
                .append(SvgWriter.number(origin.y() + y));
        return this;
    }

    public Mark.Path with(Stroke pen) {
        return new Mark.Path(data.toString(), pen);
    }
}

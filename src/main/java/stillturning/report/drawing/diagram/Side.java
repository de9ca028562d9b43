package stillturning.report.drawing.diagram;

/** The side of a symbol on which a port lies. */
public enum Side {
    WEST(-1, 0),
    EAST(1, 0),
    NORTH(0, -1),
    SOUTH(0, 1);

    public final int dx;
    public final int dy;

    Side(int dx, int dy) {
        this.dx = dx;
        this.dy = dy;
    }

    public boolean horizontal() {
        return dy == 0;
    }
}

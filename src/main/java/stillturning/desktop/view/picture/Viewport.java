package stillturning.desktop.view.picture;

import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/**
 * Which part of a picture a window shows.
 *
 * @param scale pixels of the window for each unit of the picture
 * @param x place in the window of the picture's left edge (pixels)
 * @param y place in the window of the picture's upper edge (pixels)
 */
record Viewport(double scale, double x, double y) {
    static final double SMALLEST = 0.05;
    static final double LARGEST = 8;

    /** Picture left over between a picture that was fitted and the window's edge. */
    private static final double EDGE = 12;

    /** As much of the picture that stays in sight at least, however far it is moved. */
    private static final double IN_SIGHT = 60;

    /** The whole picture in the middle of the window, not enlarged beyond a limit. */
    static Viewport fitting(Box picture, double width, double height, double largest) {
        double across = (width - 2 * EDGE) / Math.max(1, picture.width());
        double down = (height - 2 * EDGE) / Math.max(1, picture.height());
        double scale = bounded(Math.min(largest, Math.min(across, down)));
        return new Viewport(
                scale,
                (width - picture.width() * scale) / 2 - picture.x() * scale,
                (height - picture.height() * scale) / 2 - picture.y() * scale);
    }

    /**
     * As {@link #fitting}, but never smaller than can be read: what then has no room is to the
     * right and below, for what feeds stands on the left.
     *
     * @param smallest pixels for each unit that can still be read
     */
    static Viewport readable(
            Box picture, double width, double height, double smallest, double largest) {
        Viewport whole = fitting(picture, width, height, largest);
        if (whole.scale >= smallest) {
            return whole;
        }
        double scale = bounded(smallest);
        return new Viewport(
                scale,
                start(picture.x() * scale, picture.width() * scale, width),
                start(picture.y() * scale, picture.height() * scale, height));
    }

    /** Moved up or down to have a height of the picture in the middle, but never past its edges. */
    Viewport level(Box picture, double pictureY, double height) {
        double most = EDGE - picture.y() * scale;
        double least = height - EDGE - picture.bottom() * scale;
        return least >= most
                ? this
                : new Viewport(
                        scale, x, Math.max(least, Math.min(most, height / 2 - pictureY * scale)));
    }

    /** In the middle where there is room, else from the edge on. */
    private static double start(double from, double length, double room) {
        return Math.max(EDGE, (room - length) / 2) - from;
    }

    private static double bounded(double scale) {
        return Math.max(SMALLEST, Math.min(LARGEST, scale));
    }

    /** Enlarged by a factor, so that the place under a point of the window stays there. */
    Viewport zoomed(double factor, double atX, double atY) {
        double next = bounded(scale * factor);
        double ratio = next / scale;
        return new Viewport(next, atX - (atX - x) * ratio, atY - (atY - y) * ratio);
    }

    Viewport movedBy(double dx, double dy) {
        return new Viewport(scale, x + dx, y + dy);
    }

    /** The nearest one that leaves some of the picture in sight. */
    Viewport within(Box picture, double width, double height) {
        double marginX = Math.min(IN_SIGHT, width / 2);
        double marginY = Math.min(IN_SIGHT, height / 2);
        return new Viewport(
                scale,
                Math.max(marginX - picture.right() * scale, Math.min(width - marginX, x)),
                Math.max(marginY - picture.bottom() * scale, Math.min(height - marginY, y)));
    }

    /** A place of the picture in the middle of the window. */
    Viewport centred(Point at, double width, double height) {
        return new Viewport(scale, width / 2 - at.x() * scale, height / 2 - at.y() * scale);
    }

    /** Moved as little as it takes to see a box, or its upper left corner if it is too large. */
    Viewport showing(Box box, double width, double height) {
        double left = x + box.x() * scale;
        double top = y + box.y() * scale;
        double dx = shift(left, box.width() * scale, width);
        double dy = shift(top, box.height() * scale, height);
        return movedBy(dx, dy);
    }

    private static double shift(double from, double length, double room) {
        if (from < EDGE || length > room - 2 * EDGE) {
            return EDGE - from;
        }
        return Math.min(0, room - EDGE - from - length);
    }

    /** Part of the way to another, for a short movement that the eye can follow. */
    Viewport towards(Viewport other, double share) {
        double next = scale * Math.pow(other.scale / scale, share);
        // places move in step with the scale, so that the way is straight on the picture
        double done = other.scale == scale ? share : (next - scale) / (other.scale - scale);
        return new Viewport(next, x + (other.x - x) * done, y + (other.y - y) * done);
    }

    /** The place of the picture under a point of the window. */
    Point onPicture(double windowX, double windowY) {
        return new Point((windowX - x) / scale, (windowY - y) / scale);
    }

    /** The point of the window where a place of the picture is. */
    Point onWindow(Point at) {
        return new Point(x + at.x() * scale, y + at.y() * scale);
    }

    /** The part of the window where a part of the picture is. */
    Box onWindow(Box part) {
        Point corner = onWindow(new Point(part.x(), part.y()));
        return new Box(corner.x(), corner.y(), part.width() * scale, part.height() * scale);
    }

    /** The part of the picture's plane that the window shows. */
    Box seen(double width, double height) {
        Point corner = onPicture(0, 0);
        return new Box(corner.x(), corner.y(), width / scale, height / scale);
    }
}

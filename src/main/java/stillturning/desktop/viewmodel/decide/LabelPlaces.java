package stillturning.desktop.viewmodel.decide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.report.drawing.Box;

/**
 * Places names beside points so that none covers another name, a point, or the frame. Each name
 * takes the cheapest of some places around its point, and again while that helps any of them.
 */
public final class LabelPlaces {

    private static final int ROUNDS = 6;
    private static final int RINGS = 7;

    /** Cost of a square unit covered, against a unit of distance. */
    private static final double COVERED = 50;

    /** Cost of a line crossed, or of a thing between a point and its name. */
    private static final double CROSSED = 30;

    /** So many places on the way from a point to its name are looked at. */
    private static final int WAY = 12;

    /** A name with the point that it belongs to, and its size; a point without one has no width. */
    public record PlacedName(double x, double y, double width, double height) {}

    /** A straight piece of a line that names had better not cross. */
    public record Segment(double x1, double y1, double x2, double y2) {

        /** As thin a box as segments are that run along the sides. */
        private Box box() {
            return new Box(
                    Math.min(x1, x2) - 1,
                    Math.min(y1, y2) - 1,
                    Math.abs(x2 - x1) + 2,
                    Math.abs(y2 - y1) + 2);
        }
    }

    private final Box frame;
    private final List<PlacedName> names;
    private final List<Box> points;
    private final List<Box> segments;
    private final List<Box> placed = new ArrayList<>();

    private LabelPlaces(Box frame, double radius, List<PlacedName> names, List<Segment> segments) {
        this.frame = frame;
        this.names = names;
        this.points =
                names.stream()
                        .map(n -> new Box(n.x - radius, n.y - radius, 2 * radius, 2 * radius))
                        .toList();
        this.segments = segments.stream().map(Segment::box).toList();
    }

    /**
     * A place for each name, in their order.
     *
     * @param radius how far the mark of a point reaches
     */
    public static List<Box> of(
            Box frame, double radius, List<PlacedName> names, List<Segment> segments) {
        List<Integer> order =
                IntStream.range(0, names.size())
                        .filter(i -> names.get(i).width > 0)
                        .boxed()
                        .collect(Collectors.toCollection(ArrayList::new));
        LabelPlaces places = new LabelPlaces(frame, radius, names, segments);
        List<Box> first = places.placed(order, radius);
        double cost = places.cost();
        Collections.reverse(order);
        List<Box> second = places.placed(order, radius);
        return places.cost() < cost ? second : first;
    }

    /** Where names end that take their places in an order; the later ones have less choice. */
    private List<Box> placed(List<Integer> order, double radius) {
        placed.clear();
        names.forEach(n -> placed.add(inside(around(n, radius).get(0))));
        for (int round = 0; round < ROUNDS; round++) {
            order.forEach(i -> improve(i, radius));
        }
        return List.copyOf(placed);
    }

    private double cost() {
        return IntStream.range(0, placed.size()).mapToDouble(i -> cost(i, placed.get(i))).sum();
    }

    private void improve(int i, double radius) {
        Box best = placed.get(i);
        double least = cost(i, best);
        for (Box wanted : around(names.get(i), radius)) {
            Box box = inside(wanted);
            double cost = cost(i, box);
            if (cost < least - 1e-9) {
                best = box;
                least = cost;
            }
        }
        placed.set(i, best);
    }

    /** Moved into the frame, as far as it fits there. */
    private Box inside(Box box) {
        double x = Math.max(frame.x(), Math.min(box.x(), frame.right() - box.width()));
        double y = Math.max(frame.y(), Math.min(box.y(), frame.bottom() - box.height()));
        return new Box(x, y, box.width(), box.height());
    }

    private double cost(int i, Box box) {
        PlacedName name = names.get(i);
        double covered =
                IntStream.range(0, placed.size())
                                .filter(j -> j != i)
                                .mapToDouble(j -> overlap(box, placed.get(j)))
                                .sum()
                        + points.stream().mapToDouble(p -> overlap(box, p)).sum()
                        + box.width() * box.height()
                        - overlap(box, frame);
        long crossed =
                segments.stream().filter(p -> overlap(box, p) > 0).count()
                        + IntStream.range(0, placed.size())
                                .filter(j -> j != i && inTheWay(i, box, j))
                                .count()
                        + IntStream.range(0, points.size())
                                .filter(j -> j != i && passes(name, box, points.get(j)))
                                .count();
        return COVERED * covered + CROSSED * crossed + distance(name, box);
    }

    /** Whether the way from one point to its name goes through the name of another. */
    private boolean inTheWay(int i, Box box, int j) {
        Box other = placed.get(j);
        return passes(names.get(i), box, other) || passes(names.get(j), other, box);
    }

    /** Whether the way from the point to its name goes through something else. */
    private static boolean passes(PlacedName name, Box box, Box other) {
        double x = Math.max(box.x(), Math.min(name.x, box.right()));
        double y = Math.max(box.y(), Math.min(name.y, box.bottom()));
        for (int step = 0; step <= WAY; step++) {
            double share = (double) step / WAY;
            double atX = name.x + share * (x - name.x);
            double atY = name.y + share * (y - name.y);
            if (atX > other.x() && atX < other.right() && atY > other.y() && atY < other.bottom()) {
                return true;
            }
        }
        return false;
    }

    /** The area that two boxes have in common. */
    static double overlap(Box one, Box other) {
        double wide = Math.min(one.right(), other.right()) - Math.max(one.x(), other.x());
        double high = Math.min(one.bottom(), other.bottom()) - Math.max(one.y(), other.y());
        return wide > 0 && high > 0 ? wide * high : 0;
    }

    /** From the point to the nearest place of the box. */
    private static double distance(PlacedName name, Box box) {
        double wide = Math.max(0, Math.max(box.x() - name.x, name.x - box.right()));
        double high = Math.max(0, Math.max(box.y() - name.y, name.y - box.bottom()));
        return Math.hypot(wide, high);
    }

    /** Right, left, above, below and between, nearest first. */
    private static List<Box> around(PlacedName n, double radius) {
        List<Box> boxes = new ArrayList<>();
        for (int ring = 0; ring < RINGS; ring++) {
            double gap = radius + 3 + ring * n.height * 0.7;
            for (double across : new double[] {1, 0, -1, 0.5, -0.5}) {
                for (double up : new double[] {0, -1, 1}) {
                    // neither beside nor above: it would lie on the point
                    if (Math.abs(across) < 1 && up == 0) {
                        continue;
                    }
                    double x = n.x + across * (gap + n.width / 2) - n.width / 2;
                    double y = n.y + up * (gap + n.height / 2) - n.height / 2;
                    boxes.add(new Box(x, y, n.width, n.height));
                }
            }
        }
        return boxes;
    }
}

package stillturning.desktop.view.picture;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.Side;
import stillturning.report.drawing.layout.Route;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.drawing.layout.SymbolPosition;

/** What can be pointed at on a sheet, and what lies beside what. */
final class Targets {
    static final Targets NONE = new Targets(Map.of(), List.of());

    private final Map<String, SymbolPosition> spots;
    private final List<Route> courses;

    private Targets(Map<String, SymbolPosition> spots, List<Route> courses) {
        this.spots = spots;
        this.courses = courses;
    }

    static Targets of(Sheet sheet) {
        return new Targets(sheet.spots(), sheet.courses());
    }

    /** The symbol or line at a place; lines count up to some distance from them. */
    Optional<String> keyAt(Point at, double reach) {
        Optional<String> symbol =
                spots.values().stream()
                        .filter(spot -> spot.box().holds(at))
                        .min(Comparator.comparingDouble(s -> s.box().width() * s.box().height()))
                        .map(SymbolPosition::symbol);
        return symbol.or(
                () ->
                        courses.stream()
                                .filter(course -> course.distanceFrom(at) <= reach)
                                .min(Comparator.comparingDouble(c -> c.distanceFrom(at)))
                                .map(course -> "line " + course.number()));
    }

    Optional<SymbolPort> portAt(Point at) {
        return spots.values().stream()
                .flatMap(
                        spot ->
                                spot
                                        .portAt(at)
                                        .map(p -> new SymbolPort(spot.symbol(), p.port()))
                                        .stream())
                .findFirst();
    }

    Optional<SymbolPosition.LineLanding> landing(SymbolPort port) {
        return Optional.ofNullable(spots.get(port.symbol())).stream()
                .flatMap(spot -> spot.ports().stream())
                .filter(landing -> landing.port().equals(port.port()))
                .findFirst();
    }

    List<SymbolPosition> spots() {
        return List.copyOf(spots.values());
    }

    Optional<Route> course(String key) {
        return courses.stream().filter(course -> key.equals("line " + course.number())).findFirst();
    }

    /** Around a symbol or a line. */
    Optional<Box> box(String key) {
        SymbolPosition spot = spots.get(key);
        if (spot != null) {
            return Optional.of(spot.box());
        }
        return course(key)
                .flatMap(
                        course ->
                                course.points().stream()
                                        .map(at -> new Box(at.x(), at.y(), 0, 0))
                                        .reduce(Box::joined));
    }

    /** Every symbol and line that lies wholly within a box. */
    Set<String> within(Box box) {
        Set<String> keys = new TreeSet<>();
        spots.values().stream()
                .filter(spot -> holds(box, spot.box()))
                .forEach(spot -> keys.add(spot.symbol()));
        courses.stream()
                .filter(course -> course.points().stream().allMatch(box::holds))
                .forEach(course -> keys.add("line " + course.number()));
        return keys;
    }

    private static boolean holds(Box outer, Box inner) {
        return outer.holds(new Point(inner.x(), inner.y()))
                && outer.holds(new Point(inner.right(), inner.bottom()));
    }

    /** The symbol to begin with: at the top left. */
    Optional<String> first() {
        return spots.values().stream()
                .min(Comparator.comparingDouble(s -> s.box().x() + s.box().y()))
                .map(SymbolPosition::symbol);
    }

    /** The nearest symbol on one side; straight ahead counts as nearer than aside. */
    Optional<String> neighbour(String key, Side side) {
        return box(key).flatMap(
                        from ->
                                spots.values().stream()
                                        .filter(spot -> !spot.symbol().equals(key))
                                        .filter(spot -> ahead(from, spot.box(), side) > 1)
                                        .min(
                                                Comparator.comparingDouble(
                                                        s -> distance(from, s.box(), side)))
                                        .map(SymbolPosition::symbol));
    }

    /** The symbol at the other end of one of its lines, on one side; else on no side. */
    Optional<String> along(String key, Side side) {
        return box(key).flatMap(
                        from ->
                                courses.stream()
                                        .map(Route::line)
                                        .flatMap(line -> otherEnd(line, key))
                                        .flatMap(
                                                other ->
                                                        Optional.ofNullable(spots.get(other))
                                                                .stream())
                                        .filter(spot -> ahead(from, spot.box(), side) > 1)
                                        .min(
                                                Comparator.comparingDouble(
                                                        s -> distance(from, s.box(), side)))
                                        .map(SymbolPosition::symbol));
    }

    private static Stream<String> otherEnd(DiagramLine line, String key) {
        if (line.fromSymbol().equals(key)) {
            return Stream.of(line.toSymbol()).filter(to -> !to.equals(key));
        }
        return line.toSymbol().equals(key) ? Stream.of(line.fromSymbol()) : Stream.empty();
    }

    /** Where lines can end on a symbol, in its order. */
    List<SymbolPort> ports(String symbol) {
        return Optional.ofNullable(spots.get(symbol)).stream()
                .flatMap(spot -> spot.ports().stream())
                .map(landing -> new SymbolPort(symbol, landing.port()))
                .toList();
    }

    private static double ahead(Box from, Box to, Side side) {
        double dx = to.x() + to.width() / 2 - from.x() - from.width() / 2;
        double dy = to.y() + to.height() / 2 - from.y() - from.height() / 2;
        return switch (side) {
            case WEST -> -dx;
            case EAST -> dx;
            case NORTH -> -dy;
            case SOUTH -> dy;
        };
    }

    private static double distance(Box from, Box to, Side side) {
        boolean level = side == Side.WEST || side == Side.EAST;
        double aside =
                Math.abs(
                        level
                                ? to.y() + to.height() / 2 - from.y() - from.height() / 2
                                : to.x() + to.width() / 2 - from.x() - from.width() / 2);
        return ahead(from, to, side) + 3 * aside;
    }
}

package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;

/**
 * Moves the text of a line along the line where another line runs through it, which the layout does
 * not exclude at ports on upper and lower sides; where there is no room it is left to the title.
 */
final class LineLabels {
    private static final double ABOVE = 3.5;
    private static final double BELOW = 11.5;
    private static final double HAIR = 0.5;

    private final PlacedDiagram placed;
    private final List<PlacedDiagram.PlacedLine> routes;
    private final List<Box> strokes = new ArrayList<>();

    private LineLabels(PlacedDiagram placed) {
        this.placed = placed;
        routes = new ArrayList<>(placed.routes());
        placed.routes().forEach(route -> strokes.addAll(segments(route)));
    }

    static PlacedDiagram cleared(PlacedDiagram placed) {
        LineLabels labels = new LineLabels(placed);
        for (int i = 0; i < labels.routes.size(); i++) {
            labels.clear(i);
        }
        return new PlacedDiagram(
                placed.symbols(),
                List.copyOf(labels.routes),
                placed.frames(),
                placed.width(),
                placed.height());
    }

    private static List<Box> segments(PlacedDiagram.PlacedLine route) {
        List<Box> segments = new ArrayList<>();
        for (int i = 1; i < route.points().size(); i++) {
            Point a = route.points().get(i - 1);
            Point b = route.points().get(i);
            segments.add(
                    new Box(
                            Math.min(a.x(), b.x()) - HAIR,
                            Math.min(a.y(), b.y()) - HAIR,
                            Math.abs(a.x() - b.x()) + 2 * HAIR,
                            Math.abs(a.y() - b.y()) + 2 * HAIR));
        }
        return segments;
    }

    private void clear(int index) {
        PlacedDiagram.PlacedLine route = routes.get(index);
        List<SymbolShape.Caption> kept = new ArrayList<>();
        for (SymbolShape.Caption label : route.labels()) {
            Stream<SymbolShape.Caption> elsewhere =
                    segments(route).stream()
                            .filter(segment -> segment.height() <= 2 * HAIR)
                            .sorted(Comparator.comparingDouble(segment -> -segment.width()))
                            .flatMap(segment -> places(label, segment));
            Stream.concat(Stream.of(label), elsewhere)
                    .filter(place -> free(place, index))
                    .findFirst()
                    .ifPresent(kept::add);
        }
        routes.set(
                index,
                new PlacedDiagram.PlacedLine(
                        route.number(),
                        route.line(),
                        route.points(),
                        route.joints(),
                        List.copyOf(kept)));
    }

    /** Places over and under a level stretch: at its end, its middle and its start. */
    private static Stream<SymbolShape.Caption> places(SymbolShape.Caption label, Box stretch) {
        double half = label.box().width() / 2 + 2;
        double y = stretch.y() + HAIR;
        if (stretch.width() < 2 * half) {
            return Stream.of();
        }
        return Stream.of(
                        stretch.right() - half,
                        stretch.x() + stretch.width() / 2,
                        stretch.x() + half)
                .flatMap(x -> Stream.of(new Point(x, y - ABOVE), new Point(x, y + BELOW)))
                .map(
                        at ->
                                new SymbolShape.Caption(
                                        label.words(), at.x(), at.y(), label.anchor(), false));
    }

    private boolean free(SymbolShape.Caption label, int index) {
        Box box = label.box();
        boolean free =
                strokes.stream().noneMatch(box::overlaps)
                        && placed.symbols().stream().noneMatch(s -> s.box().overlaps(box))
                        && box.x() >= 0
                        && box.y() >= 0
                        && box.bottom() <= placed.height();
        for (int i = 0; free && i < routes.size(); i++) {
            int other = i;
            free =
                    routes.get(i).labels().stream()
                            .noneMatch(there -> other != index && there.box().overlaps(box));
        }
        return free;
    }
}

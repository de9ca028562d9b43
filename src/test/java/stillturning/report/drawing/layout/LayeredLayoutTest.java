package stillturning.report.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Geometry of laid out diagrams. */
class LayeredLayoutTest {
    /** Boxes that touch by less than this do not overlap to the eye. */
    private static final double HAIR = 0.6;

    static Stream<Diagram> realistic() {
        return Stream.of(
                Examples.oneBattery(),
                Examples.twoBatteries(),
                Examples.controller(),
                Examples.grouped(),
                Examples.glyphs());
    }

    static Stream<Diagram> all() {
        Stream<Diagram> random =
                LongStream.rangeClosed(1, Effort.cases(8, 24))
                        .mapToObj(seed -> RandomDiagrams.of(seed, 10 + (int) seed, seed % 4 == 0));
        return Stream.concat(realistic(), random);
    }

    private static Box shrunk(Box box) {
        return new Box(
                box.x() + HAIR,
                box.y() + HAIR,
                Math.max(0, box.width() - 2 * HAIR),
                Math.max(0, box.height() - 2 * HAIR));
    }

    private static List<Box> texts(PlacedDiagram placed) {
        List<Box> texts = new ArrayList<>();
        for (PlacedDiagram.PlacedSymbol symbol : placed.symbols()) {
            Point corner = symbol.corner();
            symbol.sized()
                    .shape()
                    .captions()
                    .forEach(c -> texts.add(c.box().movedBy(corner.x(), corner.y())));
            for (GroundStub stub : symbol.sized().stubs()) {
                Point port = symbol.sized().portOnShape(stub).movedBy(corner.x(), corner.y());
                if (!stub.words().isEmpty()) {
                    texts.add(stub.caption(port).box());
                }
            }
        }
        placed.routes().forEach(r -> r.labels().forEach(label -> texts.add(label.box())));
        return texts.stream().map(LayeredLayoutTest::shrunk).toList();
    }

    private static List<Box> segments(PlacedDiagram.PlacedLine route) {
        List<Box> segments = new ArrayList<>();
        for (int i = 1; i < route.points().size(); i++) {
            Point a = route.points().get(i - 1);
            Point b = route.points().get(i);
            segments.add(
                    new Box(
                            Math.min(a.x(), b.x()) - 0.01,
                            Math.min(a.y(), b.y()) - 0.01,
                            Math.abs(a.x() - b.x()) + 0.02,
                            Math.abs(a.y() - b.y()) + 0.02));
        }
        return segments;
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void noTwoTextsOverlap(Diagram diagram) {
        List<Box> texts = texts(LayeredLayout.of(diagram));
        for (int i = 0; i < texts.size(); i++) {
            for (int k = i + 1; k < texts.size(); k++) {
                assertFalse(texts.get(i).overlaps(texts.get(k)), texts.get(i) + " " + texts.get(k));
            }
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void noTwoSymbolsOverlap(Diagram diagram) {
        List<PlacedDiagram.PlacedSymbol> symbols = LayeredLayout.of(diagram).symbols();
        for (int i = 0; i < symbols.size(); i++) {
            for (int k = i + 1; k < symbols.size(); k++) {
                PlacedDiagram.PlacedSymbol one = symbols.get(i);
                PlacedDiagram.PlacedSymbol other = symbols.get(k);
                assertFalse(
                        shrunk(one.box()).overlaps(shrunk(other.box())),
                        () -> one.sized().symbol().id() + " " + other.sized().symbol().id());
            }
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void noLineCrossesASymbolOrAText(Diagram diagram) {
        PlacedDiagram placed = LayeredLayout.of(diagram);
        List<Box> texts = texts(placed);
        for (PlacedDiagram.PlacedLine route : placed.routes()) {
            for (Box segment : segments(route)) {
                for (PlacedDiagram.PlacedSymbol symbol : placed.symbols()) {
                    assertFalse(
                            shrunk(symbol.box()).overlaps(segment),
                            () -> route.line() + " crosses " + symbol.sized().symbol().id());
                }
                for (Box text : texts) {
                    assertFalse(text.overlaps(segment), () -> route.line() + " crosses " + text);
                }
            }
        }
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void linesRunAtRightAnglesFromPortToPort(Diagram diagram) {
        PlacedDiagram placed = LayeredLayout.of(diagram);
        for (PlacedDiagram.PlacedLine route : placed.routes()) {
            for (Box segment : segments(route)) {
                assertTrue(
                        segment.width() < 0.05 || segment.height() < 0.05, () -> "" + route.line());
            }
            assertOnEdge(placed, route.line().fromSymbol(), route.points().get(0));
            assertOnEdge(
                    placed, route.line().toSymbol(), route.points().get(route.points().size() - 1));
        }
    }

    private static void assertOnEdge(PlacedDiagram placed, String id, Point end) {
        Box box =
                placed.symbols().stream()
                        .filter(symbol -> symbol.sized().symbol().id().equals(id))
                        .findFirst()
                        .orElseThrow()
                        .box();
        double toVertical = Math.min(Math.abs(end.x() - box.x()), Math.abs(end.x() - box.right()));
        double toLevel = Math.min(Math.abs(end.y() - box.y()), Math.abs(end.y() - box.bottom()));
        assertEquals(0, Math.min(toVertical, toLevel), 0.01, () -> end + " " + box);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void everythingLiesWithinThePage(Diagram diagram) {
        PlacedDiagram placed = LayeredLayout.of(diagram);
        Box page = new Box(-0.01, -0.01, placed.width() + 0.02, placed.height() + 0.02);
        Stream<Box> things =
                Stream.concat(
                        texts(placed).stream(),
                        placed.symbols().stream().map(PlacedDiagram.PlacedSymbol::box));
        things.forEach(
                box ->
                        assertTrue(
                                box.x() >= page.x()
                                        && box.y() >= page.y()
                                        && box.right() <= page.right()
                                        && box.bottom() <= page.bottom(),
                                () -> box + " on " + page));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("all")
    void looksMoveNothing(Diagram diagram) {
        PlacedDiagram before = LayeredLayout.of(diagram);
        Diagram failed =
                new Diagram(
                        diagram.id(),
                        diagram.title(),
                        diagram.symbols().stream().map(s -> s.looking(MarkState.FAILED)).toList(),
                        diagram.lines().stream().map(l -> l.looking(MarkState.DARK)).toList());
        PlacedDiagram after = LayeredLayout.of(failed);
        assertEquals(
                before.symbols().stream().map(PlacedDiagram.PlacedSymbol::box).toList(),
                after.symbols().stream().map(PlacedDiagram.PlacedSymbol::box).toList());
        assertEquals(
                before.routes().stream().map(PlacedDiagram.PlacedLine::points).toList(),
                after.routes().stream().map(PlacedDiagram.PlacedLine::points).toList());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("realistic")
    void aWholeArchitectureFitsAPage(Diagram diagram) {
        PlacedDiagram placed = LayeredLayout.of(diagram);
        assertTrue(placed.width() <= 1200, () -> "width " + placed.width());
        assertTrue(placed.height() <= 900, () -> "height " + placed.height());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("realistic")
    void everyLabelFindsRoom(Diagram diagram) {
        long wanted = diagram.lines().stream().filter(l -> !l.label().isBlank()).count();
        long drawn =
                LayeredLayout.of(diagram).routes().stream()
                        .mapToLong(route -> route.labels().size())
                        .sum();
        assertEquals(wanted, drawn);
    }

    @Test
    void loadsOfOneBusLieInOneColumn() {
        PlacedDiagram placed = LayeredLayout.of(Examples.oneBattery());
        long columns =
                placed.symbols().stream()
                        .filter(symbol -> symbol.sized().symbol().glyph() == Glyph.LOAD)
                        .mapToLong(symbol -> Math.round(symbol.box().x()))
                        .distinct()
                        .count();
        assertEquals(1, columns);
    }

    @Test
    void changingOneTextKeepsEverybodysRow() {
        Diagram before = Examples.oneBattery();
        List<DiagramSymbol> symbols = new ArrayList<>(before.symbols());
        symbols.replaceAll(
                s ->
                        s.id().equals("radio")
                                ? new DiagramSymbol(
                                        "radio", Glyph.LOAD, "Radio 2", "4 A", s.ports())
                                : s);
        Diagram after = new Diagram("one", before.title(), symbols, before.lines());
        assertEquals(rows(before), rows(after));
    }

    private static List<Double> rows(Diagram diagram) {
        return LayeredLayout.of(diagram).symbols().stream().map(s -> s.box().y()).toList();
    }

    @Test
    void aGroundWithOneLineIsAStubAndOneWithSeveralABar() {
        PlacedDiagram placed = LayeredLayout.of(Examples.oneBattery());
        assertTrue(
                placed.symbols().stream()
                        .noneMatch(s -> s.sized().symbol().id().equals("battery-g")));
        List<Port> in = List.of(new Port("in", Side.WEST));
        List<Port> out = List.of(new Port("minus", Side.EAST));
        Diagram shared =
                new Diagram(
                        "g",
                        "",
                        List.of(
                                new DiagramSymbol("a", Glyph.LOAD, "a", "", out),
                                new DiagramSymbol("b", Glyph.LOAD, "b", "", out),
                                new DiagramSymbol("g", Glyph.EARTH, "G1", "", in)),
                        List.of(
                                new DiagramLine("a", "minus", "g", "in", ""),
                                new DiagramLine("b", "minus", "g", "in", "")));
        assertEquals(3, LayeredLayout.of(shared).symbols().size());
        assertEquals(2, LayeredLayout.of(shared).routes().size());
    }

    @Thorough
    @Test
    void threeHundredSymbolsAreLaidOutInSeconds() {
        Diagram large = RandomDiagrams.of(3, 300, false);
        LayeredLayout.of(RandomDiagrams.of(4, 60, false));
        // time of this thread alone, so that a busy machine does not fail the test
        ThreadMXBean clock = ManagementFactory.getThreadMXBean();
        long start = clock.getCurrentThreadCpuTime();
        PlacedDiagram placed = LayeredLayout.of(large);
        double seconds = (clock.getCurrentThreadCpuTime() - start) / 1e9;
        assertTrue(placed.symbols().size() > 200);
        assertTrue(seconds < 5, () -> seconds + " s");
    }
}

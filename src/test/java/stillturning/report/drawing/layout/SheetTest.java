package stillturning.report.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

class SheetTest {

    private static Diagram dark(Diagram diagram) {
        Map<String, MarkState> symbols = new HashMap<>();
        diagram.symbols().forEach(s -> symbols.put(s.id(), MarkState.DARK));
        Map<Integer, MarkState> lines = new HashMap<>();
        IntStream.range(0, diagram.lines().size()).forEach(i -> lines.put(i, MarkState.ON_BACKUP));
        Map<String, Glyph> glyphs = new HashMap<>();
        diagram.symbols().stream()
                .filter(s -> s.glyph() == Glyph.BREAKER_CLOSED)
                .forEach(s -> glyphs.put(s.id(), Glyph.BREAKER_OPEN));
        return diagram.looking(symbols, lines, glyphs);
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("stillturning.report.drawing.layout.LayeredLayoutTest#all")
    void anotherStateIsPaintedAsIfItHadBeenLaidOut(Diagram diagram) {
        Diagram dark = dark(diagram);
        assertEquals(OneLine.of(dark), OneLine.laidOut(diagram).picture(dark));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("stillturning.report.drawing.layout.LayeredLayoutTest#all")
    void everySymbolPortAndLineHasItsPlaceOnThePicture(Diagram diagram) {
        Sheet sheet = OneLine.laidOut(diagram);
        Box paper = new Box(0, 0, sheet.picture().width(), sheet.picture().height());
        assertEquals(diagram.symbols().size(), sheet.spots().size());
        assertEquals(diagram.lines().size(), sheet.courses().size());
        for (DiagramSymbol symbol : diagram.symbols()) {
            SymbolPosition spot = spot(sheet, symbol.id());
            assertTrue(paper.holds(new Point(spot.box().x(), spot.box().y())), symbol.id());
            assertTrue(
                    paper.holds(new Point(spot.box().right(), spot.box().bottom())), symbol.id());
            assertEquals(
                    symbol.ports().stream().map(Port::name).toList(),
                    spot.ports().stream().map(SymbolPosition.LineLanding::port).toList());
        }
        sheet.courses().forEach(c -> c.points().forEach(p -> assertTrue(paper.holds(p))));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("stillturning.report.drawing.layout.LayeredLayoutTest#all")
    void linesEndAtTheirPorts(Diagram diagram) {
        Sheet sheet = OneLine.laidOut(diagram);
        for (Route course : sheet.courses()) {
            DiagramLine line = course.line();
            assertEnds(sheet, line.fromSymbol(), line.fromPort(), course.points().get(0));
            Point end = course.points().get(course.points().size() - 1);
            assertEnds(sheet, line.toSymbol(), line.toPort(), end);
        }
    }

    private static SymbolPosition spot(Sheet sheet, String id) {
        SymbolPosition spot = sheet.spots().get(id);
        if (spot == null) {
            throw new AssertionError("no spot for " + id);
        }
        return spot;
    }

    private static void assertEnds(Sheet sheet, String symbol, String port, Point end) {
        SymbolPosition spot = spot(sheet, symbol);
        SymbolPosition.LineLanding landing =
                spot.ports().stream().filter(p -> p.port().equals(port)).findFirst().orElseThrow();
        Glyph glyph =
                sheet.diagram().symbols().stream()
                        .filter(s -> s.id().equals(symbol))
                        .findFirst()
                        .orElseThrow()
                        .glyph();
        if (glyph.form == Glyph.GlyphForm.INLINE || glyph.form == Glyph.GlyphForm.BOX) {
            // where stubs widen the room of a symbol, the last of a line lies beside them
            boolean level = landing.side().horizontal() && landing.at().y() == end.y();
            boolean upright = !landing.side().horizontal() && landing.at().x() == end.x();
            assertTrue(level || upright, symbol + "." + port + " " + landing.at() + end);
        } else {
            assertEquals(landing.at().x(), end.x(), 1e-6, symbol);
        }
    }

    @Test
    void portsOfASymbolNeverShareAPlace() {
        List<Port> ports =
                List.of(
                        new Port("a", Side.WEST),
                        new Port("b", Side.WEST),
                        new Port("c", Side.EAST),
                        new Port("d", Side.EAST),
                        new Port("e", Side.SOUTH),
                        new Port("f", Side.SOUTH));
        DiagramSymbol relay = new DiagramSymbol("k", Glyph.CONTACTOR_OPEN, "Relay", "", ports);
        DiagramSymbol battery =
                new DiagramSymbol("g", Glyph.BATTERY, "", "", List.of(new Port("+", Side.EAST)));
        Diagram diagram =
                new Diagram(
                        "d",
                        "",
                        List.of(battery, relay),
                        List.of(new DiagramLine("g", "+", "k", "b", "")));
        Set<Point> places = new HashSet<>();
        spot(OneLine.laidOut(diagram), "k").ports().forEach(p -> places.add(p.at()));
        assertEquals(6, places.size());
    }

    @Test
    void aPlaceTellsThePortAndTheLineThere() {
        Sheet sheet = OneLine.laidOut(Examples.twoBatteries());
        Route course = sheet.courses().get(0);
        Point start = course.points().get(0);
        assertEquals(0, course.distanceFrom(start));
        boolean upright = start.x() == course.points().get(1).x();
        Point aside = upright ? start.movedBy(5, 0) : start.movedBy(0, 5);
        assertEquals(5, course.distanceFrom(aside), 1e-9);
        SymbolPosition from = spot(sheet, course.line().fromSymbol());
        assertEquals(
                course.line().fromPort(),
                from.portAt(start).map(SymbolPosition.LineLanding::port).orElseThrow());
    }

    @Test
    void anotherDiagramIsNotPaintedOnTheSheet() {
        Sheet sheet = OneLine.laidOut(Examples.twoBatteries());
        assertThrows(IllegalArgumentException.class, () -> sheet.picture(Examples.grouped()));
        DiagramSymbol fuse =
                new DiagramSymbol("f", Glyph.FUSE, "", "", List.of(new Port("in", Side.WEST)));
        assertThrows(IllegalArgumentException.class, () -> fuse.drawnAs(Glyph.LAMP));
        assertEquals(Glyph.FUSE_BLOWN, fuse.drawnAs(Glyph.FUSE_BLOWN).glyph());
    }
}

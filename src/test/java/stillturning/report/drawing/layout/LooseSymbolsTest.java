package stillturning.report.drawing.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import stillturning.bench.Thorough;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

class LooseSymbolsTest {

    private static final Diagram DRAWN = untitled(Examples.twoBatteries());
    private static final Sheet BEFORE = OneLine.laidOut(DRAWN);

    private static Diagram untitled(Diagram diagram) {
        return new Diagram(diagram.id(), "", diagram.symbols(), diagram.lines());
    }

    private static DiagramSymbol fresh(String id, Glyph glyph) {
        return new DiagramSymbol(
                id, glyph, id, "", List.of(new Port("a", Side.WEST), new Port("b", Side.EAST)));
    }

    private static Diagram with(DiagramSymbol... more) {
        List<DiagramSymbol> symbols = new ArrayList<>(DRAWN.symbols());
        symbols.addAll(List.of(more));
        return new Diagram(DRAWN.id(), "", symbols, DRAWN.lines());
    }

    private static Box box(Sheet sheet, String id) {
        SymbolPosition spot = sheet.spots().get(id);
        assertTrue(spot != null, id);
        return spot.box();
    }

    private static double away(Box box, Point at) {
        return Math.hypot(box.x() + box.width() / 2 - at.x(), box.y() + box.height() / 2 - at.y());
    }

    @ParameterizedTest
    @EnumSource(
            value = Glyph.class,
            names = {"BREAKER_CLOSED", "BUS", "BATTERY"})
    void whereThereIsRoomASymbolLiesWhereItWasDropped(Glyph glyph) {
        Point free = new Point(BEFORE.picture().width() + 120, 150);
        Sheet sheet = OneLine.laidOut(with(fresh("new", glyph)), BEFORE, Map.of("new", free));
        assertTrue(away(box(sheet, "new"), free) < 12, box(sheet, "new") + " for " + free);
        assertTrue(sheet.picture().width() >= box(sheet, "new").right());
    }

    @Test
    void whatIsDrawnAlreadyStaysWhereItIs() {
        Sheet sheet =
                OneLine.laidOut(
                        with(fresh("new", Glyph.BREAKER_CLOSED)),
                        BEFORE,
                        Map.of("new", new Point(60, 60)));
        Sheet without = OneLine.laidOut(DRAWN, BEFORE);
        for (DiagramSymbol symbol : DRAWN.symbols()) {
            assertEquals(box(BEFORE, symbol.id()), box(sheet, symbol.id()));
        }
        assertTrue(without.courses().equals(sheet.courses()), "lines run as they do without it");
    }

    /** Wherever something is dropped, nothing lies on anything, and all of it is on the paper. */
    @Thorough
    @Test
    void noPlaceIsTakenTwice() {
        Random random = new Random(11);
        for (int n = 0; n < 100; n++) {
            Point one = anywhere(random);
            Point two = random.nextBoolean() ? one : anywhere(random);
            Sheet sheet =
                    OneLine.laidOut(
                            with(fresh("one", Glyph.BREAKER_CLOSED), fresh("two", Glyph.BATTERY)),
                            BEFORE,
                            Map.of("one", one, "two", two));
            Box paper = new Box(0, 0, sheet.picture().width(), sheet.picture().height());
            for (String id : List.of("one", "two")) {
                Box box = box(sheet, id);
                assertTrue(paper.holds(new Point(box.x(), box.y())), id);
                assertTrue(paper.holds(new Point(box.right(), box.bottom())), id);
                sheet.spots().values().stream()
                        .filter(spot -> !spot.symbol().equals(id))
                        .forEach(spot -> assertTrue(!spot.box().overlaps(box), spot + " on " + id));
                sheet.courses().forEach(course -> assertTrue(!crosses(course, box), id));
            }
        }
    }

    private static Point anywhere(Random random) {
        return new Point(
                random.nextDouble() * 1.2 * BEFORE.picture().width() - 20,
                random.nextDouble() * 1.2 * BEFORE.picture().height() - 20);
    }

    private static boolean crosses(Route course, Box box) {
        for (int i = 1; i < course.points().size(); i++) {
            Point a = course.points().get(i - 1);
            Point b = course.points().get(i);
            Box along = new Box(a.x(), a.y(), 0, 0).joined(new Box(b.x(), b.y(), 0, 0));
            if (along.overlaps(box)) {
                return true;
            }
        }
        return false;
    }

    /** Once it is joined, the layers have a place for it. */
    @Test
    void aJoinedSymbolGoesWhereTheLayersHaveIt() {
        DiagramSymbol symbol = fresh("new", Glyph.BREAKER_CLOSED);
        DiagramSymbol bus =
                DRAWN.symbols().stream()
                        .filter(s -> s.glyph() == Glyph.BUS)
                        .findFirst()
                        .orElseThrow();
        Diagram loose = with(symbol);
        List<DiagramLine> lines = new ArrayList<>(loose.lines());
        lines.add(new DiagramLine(bus.id(), bus.ports().get(0).name(), "new", "a", ""));
        Diagram joined = new Diagram(loose.id(), "", loose.symbols(), lines);
        Map<String, Point> far = Map.of("new", new Point(3000, 3000));
        Box box = box(OneLine.laidOut(joined, BEFORE, far), "new");
        assertTrue(box.right() < 2 * BEFORE.picture().width(), box.toString());
    }
}

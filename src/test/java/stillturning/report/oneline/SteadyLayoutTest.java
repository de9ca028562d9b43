package stillturning.report.oneline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.report.drawing.Box;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;

/** A small edit leaves the rest of a drawing where the eye looks for it. */
class SteadyLayoutTest {

    private static final Study SANDPIPER =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    private static Diagram drawn(String candidate) {
        return CandidateDrawing.of(SANDPIPER.candidate(candidate).orElseThrow(), SANDPIPER);
    }

    private static DiagramSymbol symbol(String id, Glyph glyph) {
        return new DiagramSymbol(
                id,
                glyph,
                id,
                "5 A",
                List.of(new Port("in", Side.WEST), new Port("out", Side.EAST)));
    }

    /** A load behind a breaker, before everything else. */
    private static Diagram withLoad(Diagram diagram, String bus) {
        List<DiagramSymbol> symbols = new ArrayList<>(diagram.symbols());
        symbols.add(0, symbol("new", Glyph.LOAD));
        symbols.add(0, symbol("new-breaker", Glyph.BREAKER_CLOSED));
        List<DiagramLine> lines = new ArrayList<>(diagram.lines());
        lines.add(0, new DiagramLine(bus, "out", "new-breaker", "in", ""));
        lines.add(0, new DiagramLine("new-breaker", "out", "new", "in", ""));
        return new Diagram(diagram.id(), diagram.title(), symbols, lines);
    }

    private static double middle(Sheet sheet, String id) {
        Box box = box(sheet, id);
        return box.x() + box.width() / 2;
    }

    private static Box box(Sheet sheet, String id) {
        return sheet.spots().entrySet().stream()
                .filter(e -> e.getKey().equals(id))
                .findFirst()
                .orElseThrow()
                .getValue()
                .box();
    }

    private static int turnedRound(Sheet before, Sheet after) {
        int turned = 0;
        for (String a : before.spots().keySet()) {
            for (String b : before.spots().keySet()) {
                boolean layer =
                        Math.abs(middle(before, a) - middle(before, b)) < 5
                                && Math.abs(middle(after, a) - middle(after, b)) < 5;
                if (layer
                        && box(before, a).y() < box(before, b).y()
                        && box(after, a).y() > box(after, b).y()) {
                    turned++;
                }
            }
        }
        return turned;
    }

    static Stream<Sheet> sheets() {
        return Stream.of("split-batteries", "two-alternators", "solid-state-split-engine")
                .map(SteadyLayoutTest::drawn)
                .flatMap(d -> Stream.of(OneLine.laidOut(d), OneLine.laidOut(d, 1.3)));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void aNewLoadTurnsNothingRoundWithinALayer(Sheet before) {
        Sheet after = OneLine.laidOut(withLoad(before.diagram(), "engine-bus-a"), before);
        assertEquals(0, turnedRound(before, after));
    }

    @ParameterizedTest
    @MethodSource("sheets")
    void norDoesTakingItAwayAgain(Sheet before) {
        Sheet after = OneLine.laidOut(withLoad(before.diagram(), "engine-bus-a"), before);
        Sheet again = OneLine.laidOut(before.diagram(), after);
        assertEquals(0, turnedRound(before, again));
    }

    /** Layers stay in their rows, though another row would suit the new height better. */
    @ParameterizedTest
    @ValueSource(strings = {"flight-display", "radio", "starter", "radio-breaker", "master"})
    void takingAPartAwayLeavesTheRestLeftAndRightOfEachOther(String gone) {
        Diagram diagram = drawn("two-alternators");
        Sheet before = OneLine.laidOut(diagram, 1.3);
        List<DiagramSymbol> symbols = new ArrayList<>(diagram.symbols());
        symbols.removeIf(symbol -> symbol.id().equals(gone));
        List<DiagramLine> lines = new ArrayList<>(diagram.lines());
        lines.removeIf(line -> line.fromSymbol().equals(gone) || line.toSymbol().equals(gone));
        Sheet after =
                OneLine.laidOut(new Diagram(diagram.id(), diagram.title(), symbols, lines), before);
        int turned = changedSides(before, after);
        assertTrue(turned < before.spots().size(), () -> gone + " turns " + turned + " pairs");
    }

    private static int changedSides(Sheet before, Sheet after) {
        int changed = 0;
        for (String a : after.spots().keySet()) {
            for (String b : after.spots().keySet()) {
                boolean left = box(before, a).right() < box(before, b).x();
                changed += left && box(after, b).right() < box(after, a).x() ? 1 : 0;
            }
        }
        return changed;
    }
}

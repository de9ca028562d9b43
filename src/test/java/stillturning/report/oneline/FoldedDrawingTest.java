package stillturning.report.oneline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.bench.Effort;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;

/** A drawing for a paper whose shape is known. */
class FoldedDrawingTest {

    private static final Study SANDPIPER =
            StudyReader.read(Path.of("architectures/sandpiper")).study().orElseThrow();

    /** What is left for the drawing in a window of 1920 by 1080, the values beside it (pixels). */
    private static final double WIDTH = 1499 - 24;

    private static final double HEIGHT = 926 - 24;

    private static Diagram drawn(Candidate candidate) {
        return CandidateDrawing.of(candidate, SANDPIPER);
    }

    private static double letters(Picture picture) {
        double scale = Math.min(WIDTH / picture.width(), HEIGHT / picture.height());
        return scale * picture.smallestLetters().orElseThrow();
    }

    @Test
    void everyCandidateOfTheDemoCanBeReadAsAWholeOnALargeScreen() {
        for (Candidate candidate : SANDPIPER.candidates()) {
            Picture picture = OneLine.laidOut(drawn(candidate), WIDTH / HEIGHT).picture();
            assertTrue(letters(picture) >= 9, () -> candidate.id() + ": " + letters(picture));
        }
    }

    @Test
    void aHigherPaperGetsANarrowerDrawing() {
        Diagram diagram = drawn(SANDPIPER.candidate("split-batteries").orElseThrow());
        double row = OneLine.laidOut(diagram).picture().width();
        double folded = OneLine.laidOut(diagram, 1.2).picture().width();
        assertTrue(folded < 0.75 * row, () -> folded + " of " + row);
    }

    @Test
    void aWideEnoughPaperChangesNothing() {
        Diagram diagram = drawn(SANDPIPER.candidate("one-battery-main-bus").orElseThrow());
        assertEquals(OneLine.of(diagram), OneLine.laidOut(diagram, 4).picture());
    }

    /** The layout engine cannot fold this one, so it stays in one row. */
    @Test
    void whatCannotBeFoldedIsDrawnAllTheSame() {
        Candidate candidate = SANDPIPER.candidate("one-battery-engine-bus").orElseThrow();
        Diagram rest = without(drawn(candidate), "field-breaker");
        assertEquals(OneLine.of(rest).width(), OneLine.laidOut(rest, 1).picture().width());
    }

    @Test
    void whateverIsTakenAwayTheRestIsDrawn() {
        for (Candidate candidate : SANDPIPER.candidates().subList(0, Effort.cases(1, 7))) {
            Diagram diagram = drawn(candidate);
            Sheet before = OneLine.laidOut(diagram, 1);
            for (DiagramSymbol gone : diagram.symbols().subList(0, Effort.cases(6, 40))) {
                Set<String> left = new HashSet<>(before.spots().keySet());
                left.remove(gone.id());
                Diagram rest = without(diagram, gone.id());
                assertEquals(left, OneLine.laidOut(rest, before).spots().keySet());
            }
        }
    }

    private static Diagram without(Diagram diagram, String gone) {
        List<DiagramSymbol> symbols = new ArrayList<>(diagram.symbols());
        symbols.removeIf(symbol -> symbol.id().equals(gone));
        List<DiagramLine> lines = new ArrayList<>(diagram.lines());
        lines.removeIf(line -> line.fromSymbol().equals(gone) || line.toSymbol().equals(gone));
        return new Diagram(diagram.id(), diagram.title(), symbols, lines);
    }

    /** A load that is taken off its wire stays among the loads. */
    @Test
    void aLoadThatNothingFeedsStaysOnTheRight() {
        Diagram diagram = drawn(SANDPIPER.candidate("split-batteries").orElseThrow());
        Sheet sheet = OneLine.laidOut(without(diagram, "radio-breaker"), 1.3);
        assertEquals(
                Objects.requireNonNull(sheet.spots().get("transponder")).box().x(),
                Objects.requireNonNull(sheet.spots().get("radio")).box().x(),
                0.5);
    }
}

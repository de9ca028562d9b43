package stillturning.desktop.viewmodel.draw;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.files.finding.CandidateReading;
import stillturning.files.finding.FileFinding;
import stillturning.model.HalfDrawn;
import stillturning.report.drawing.Picture;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.layout.OneLine;
import stillturning.report.drawing.layout.Sheet;
import stillturning.report.oneline.CandidateDrawing;
import stillturning.report.oneline.DrawnCandidate;

/**
 * A candidate on the paper.
 *
 * @param candidate as far as it could be read
 * @param drawn what each symbol and line stands for
 * @param sheet where everything lies
 */
public record BoardDrawing(HalfDrawn candidate, DrawnCandidate drawn, Sheet sheet) {

    private static final String WARNING = "\u26A0";

    /**
     * Lays out what was read, as like the sheet before as may be; takes a moment.
     *
     * @param before the sheet before, whose shape is kept
     * @param dropped where parts were dropped on the sheet before, by their names
     * @param shape width over height of a first sheet
     */
    static Optional<BoardDrawing> of(
            CandidateReading reading,
            Optional<BoardDrawing> before,
            Map<String, Point> dropped,
            double shape) {
        return reading.drawing().map(half -> of(half, wrong(reading), before, dropped, shape));
    }

    private static BoardDrawing of(
            HalfDrawn half,
            Set<String> wrong,
            Optional<BoardDrawing> before,
            Map<String, Point> dropped,
            double shape) {
        DrawnCandidate drawn = CandidateDrawing.atWork(half);
        Diagram diagram = marked(drawn, wrong);
        Map<String, Point> wanted = new HashMap<>();
        dropped.forEach((part, at) -> drawn.keysOf(part).forEach(key -> wanted.put(key, at)));
        Sheet sheet =
                before.filter(b -> b.candidate.id().equals(half.id()))
                        .map(b -> OneLine.laidOut(diagram, b.sheet, wanted))
                        .orElseGet(() -> OneLine.laidOut(diagram, shape));
        return new BoardDrawing(half, drawn, sheet);
    }

    private static Set<String> wrong(CandidateReading reading) {
        return reading.findings().stream()
                .filter(FileFinding::mistake)
                .flatMap(f -> f.parts().stream())
                .collect(Collectors.toSet());
    }

    /** A sign stands at each part of which something is wrong. */
    private static Diagram marked(DrawnCandidate drawn, Set<String> wrong) {
        Diagram plain = drawn.diagram();
        List<DiagramSymbol> symbols =
                plain.symbols().stream()
                        .map(s -> isWrong(drawn, s, wrong) ? warned(s) : s)
                        .toList();
        return new Diagram(plain.id(), "", symbols, plain.lines());
    }

    private static boolean isWrong(DrawnCandidate drawn, DiagramSymbol symbol, Set<String> wrong) {
        boolean sign =
                Optional.ofNullable(drawn.meanings().get(symbol.id()))
                        .flatMap(DrawnCandidate.Meaning::grounds)
                        .isPresent();
        return !sign && drawn.partAt(symbol.id()).filter(wrong::contains).isPresent();
    }

    private static DiagramSymbol warned(DiagramSymbol symbol) {
        return new DiagramSymbol(
                symbol.id(),
                symbol.glyph(),
                (WARNING + " " + symbol.label()).strip(),
                symbol.detail(),
                symbol.ports(),
                symbol.group(),
                symbol.look());
    }

    /** The picture of it. */
    public Picture picture() {
        return sheet.picture();
    }
}

package stillturning.report.drawing.diagram;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.Picture;

/**
 * A one-line diagram before it has a shape.
 *
 * @param id prefix of the names inside the SVG, so that several pictures can share a page: letters,
 *     digits and hyphens, a letter first
 * @param title may be empty
 */
public record Diagram(
        String id, String title, List<DiagramSymbol> symbols, List<DiagramLine> lines) {
    public Diagram {
        symbols = List.copyOf(symbols);
        lines = List.copyOf(lines);
        Picture.checkId(id);
        Map<String, DiagramSymbol> byId = new HashMap<>();
        for (DiagramSymbol symbol : symbols) {
            if (byId.put(symbol.id(), symbol) != null) {
                throw new IllegalArgumentException("two symbols have the id " + symbol.id());
            }
        }
        for (DiagramLine line : lines) {
            check(byId, line.fromSymbol(), line.fromPort());
            check(byId, line.toSymbol(), line.toPort());
        }
    }

    private static void check(Map<String, DiagramSymbol> byId, String symbol, String port) {
        DiagramSymbol found = byId.get(symbol);
        if (found == null) {
            throw new IllegalArgumentException(
                    "a line ends at " + symbol + ", which is no symbol of the diagram");
        }
        if (found.ports().stream().noneMatch(p -> p.name().equals(port))) {
            throw new IllegalArgumentException("symbol " + symbol + " has no port " + port);
        }
    }

    /**
     * The same diagram with everything in a state of its own.
     *
     * @param ofSymbols looks by the id of a symbol
     * @param ofLines looks by the number of a line, counted from 0
     * @param glyphs by the id of a symbol, for contacts that stand otherwise; what is in none of
     *     the three stays as it is
     */
    public Diagram looking(
            Map<String, MarkState> ofSymbols,
            Map<Integer, MarkState> ofLines,
            Map<String, Glyph> glyphs) {
        List<DiagramSymbol> otherSymbols =
                symbols.stream()
                        .map(s -> s.looking(ofSymbols.getOrDefault(s.id(), s.look())))
                        .map(s -> s.drawnAs(glyphs.getOrDefault(s.id(), s.glyph())))
                        .toList();
        List<DiagramLine> otherLines = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            otherLines.add(lines.get(i).looking(ofLines.getOrDefault(i, lines.get(i).look())));
        }
        return new Diagram(id, title, otherSymbols, otherLines);
    }

    /** Whether a layout of the other one holds for this one: only looks and contacts differ. */
    public boolean takesTheRoomOf(Diagram other) {
        boolean same =
                title.isBlank() == other.title.isBlank()
                        && symbols.size() == other.symbols.size()
                        && lines.size() == other.lines.size();
        for (int i = 0; same && i < symbols.size(); i++) {
            DiagramSymbol here = symbols.get(i);
            DiagramSymbol there = other.symbols.get(i);
            same =
                    here.glyph().takesTheRoomOf(there.glyph())
                            && here.equals(
                                    new DiagramSymbol(
                                            there.id(),
                                            here.glyph(),
                                            there.label(),
                                            there.detail(),
                                            there.ports(),
                                            there.group(),
                                            here.look()));
        }
        for (int i = 0; same && i < lines.size(); i++) {
            same = lines.get(i).equals(other.lines.get(i).looking(lines.get(i).look()));
        }
        return same;
    }
}

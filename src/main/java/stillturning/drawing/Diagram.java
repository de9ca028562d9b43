package stillturning.drawing;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A one-line diagram before it has a shape.
 *
 * @param id prefix of the names inside the SVG, so that several pictures can share a page: letters,
 *     digits and hyphens, a letter first
 * @param title may be empty
 */
public record Diagram(String id, String title, List<Symbol> symbols, List<Line> lines) {
    public Diagram {
        symbols = List.copyOf(symbols);
        lines = List.copyOf(lines);
        Picture.checkId(id);
        Map<String, Symbol> byId = new HashMap<>();
        for (Symbol symbol : symbols) {
            if (byId.put(symbol.id(), symbol) != null) {
                throw new IllegalArgumentException("two symbols have the id " + symbol.id());
            }
        }
        for (Line line : lines) {
            check(byId, line.fromSymbol(), line.fromPort());
            check(byId, line.toSymbol(), line.toPort());
        }
    }

    private static void check(Map<String, Symbol> byId, String symbol, String port) {
        Symbol found = byId.get(symbol);
        if (found == null) {
            throw new IllegalArgumentException(
                    "a line ends at " + symbol + ", which is no symbol of the diagram");
        }
        if (found.ports().stream().noneMatch(p -> p.name().equals(port))) {
            throw new IllegalArgumentException("symbol " + symbol + " has no port " + port);
        }
    }
}

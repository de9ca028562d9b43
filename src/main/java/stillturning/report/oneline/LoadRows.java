package stillturning.report.oneline;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;

/** Finds out in which load's row a symbol belongs. */
final class LoadRows {

    private LoadRows() {}

    /** The row of each symbol that feeds loads alone, counted by the loads. */
    static Map<String, Integer> of(
            List<DiagramSymbol> symbols, List<DiagramLine> lines, Set<String> buses) {
        Map<String, Integer> rows = new HashMap<>();
        for (int i = 0; i < symbols.size(); i++) {
            if (symbols.get(i).glyph() == Glyph.LOAD) {
                rows.put(symbols.get(i).id(), i);
            }
        }
        boolean changed = true;
        while (changed) {
            changed = false;
            for (DiagramLine line : lines) {
                Integer to = rows.get(line.toSymbol());
                Integer from = rows.get(line.fromSymbol());
                if (to != null
                        && !buses.contains(line.fromSymbol())
                        && (from == null || from > to)) {
                    rows.put(line.fromSymbol(), to);
                    changed = true;
                }
            }
        }
        return rows;
    }
}

package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import stillturning.report.drawing.Mark;
import stillturning.report.drawing.Point;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;

/** Room for a bar with its name above; the layout stretches it over its lines. */
final class BarShape {
    private static final double WIDEST_TEXT = 96;

    /** Bar beyond the first and last line. */
    static final double OVERHANG = 9;

    /** Room below the bar for a ground sign. */
    static final double GROUND_SIGN = 16;

    private BarShape() {}

    static SymbolShape of(DiagramSymbol symbol) {
        List<String> lines = new ArrayList<>();
        lines.addAll(TextFitting.wrapped(symbol.label(), SymbolShape.TEXT, true, WIDEST_TEXT, 2));
        int bold = lines.size();
        lines.addAll(TextFitting.wrapped(symbol.detail(), SymbolShape.TEXT, false, WIDEST_TEXT, 1));
        double text =
                Math.max(
                        SymbolShape.widestOf(lines.subList(0, bold), true),
                        SymbolShape.widestOf(lines.subList(bold, lines.size()), false));
        double width = Math.max(16, text + 2 * SymbolShape.BADGE_ROOM);
        double top = Math.max(lines.size() * SymbolShape.TEXT_LINE + 3, 10);
        List<SymbolShape.Caption> captions = new ArrayList<>();
        for (int i = 0; i < lines.size(); i++) {
            captions.add(
                    new SymbolShape.Caption(
                            lines.get(i),
                            width / 2,
                            9.5 + i * SymbolShape.TEXT_LINE,
                            Mark.Anchor.MIDDLE,
                            i < bold));
        }
        double badgeX = captions.isEmpty() ? 4.5 : captions.get(0).box().x() - 6;
        return new SymbolShape(
                width,
                top + 2 * OVERHANG + bottom(symbol),
                new Point(width / 2, top),
                Map.of(),
                List.copyOf(captions),
                new Point(badgeX, 6));
    }

    static double bottom(DiagramSymbol symbol) {
        return symbol.glyph().form == Glyph.GlyphForm.GROUND ? GROUND_SIGN : 0;
    }
}

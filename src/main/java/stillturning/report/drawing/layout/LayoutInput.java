package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.report.drawing.TextFitting;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;

/** What has to be laid out: sized symbols, and the lines between them that are not mere stubs. */
final class LayoutInput {
    private final Diagram diagram;
    private final Map<String, DiagramSymbol> symbols = new LinkedHashMap<>();
    private final Map<String, List<Integer>> linesOf = new HashMap<>();
    private final Map<String, List<GroundStub>> stubsOf = new HashMap<>();
    private final Set<String> hanging = new HashSet<>();
    private final Set<Integer> stubLines = new HashSet<>();

    private LayoutInput(Diagram diagram) {
        this.diagram = diagram;
        diagram.symbols().forEach(symbol -> symbols.put(symbol.id(), symbol));
        for (int i = 0; i < diagram.lines().size(); i++) {
            DiagramLine line = diagram.lines().get(i);
            linesOf.computeIfAbsent(line.fromSymbol(), id -> new ArrayList<>()).add(i);
            linesOf.computeIfAbsent(line.toSymbol(), id -> new ArrayList<>()).add(i);
        }
    }

    static LayoutInput of(Diagram diagram) {
        LayoutInput inventory = new LayoutInput(diagram);
        diagram.symbols().forEach(inventory::hang);
        return inventory;
    }

    /** A ground with a single line becomes a stub on its owner. */
    private void hang(DiagramSymbol ground) {
        List<Integer> lines = linesOf.getOrDefault(ground.id(), List.of());
        if (ground.glyph().form != Glyph.GlyphForm.GROUND || lines.size() != 1) {
            return;
        }
        int number = lines.get(0);
        DiagramLine line = diagram.lines().get(number);
        boolean endsHere = line.toSymbol().equals(ground.id());
        DiagramSymbol owner = symbol(endsHere ? line.fromSymbol() : line.toSymbol());
        Port port = port(owner, endsHere ? line.fromPort() : line.toPort());
        if (owner.glyph().form == Glyph.GlyphForm.INLINE
                || owner.glyph().form == Glyph.GlyphForm.BOX) {
            String words =
                    TextFitting.fitted(
                            TextFitting.joined(" ", ground.label(), ground.detail(), line.label()),
                            SymbolShape.TEXT,
                            false,
                            110);
            stubsOf.computeIfAbsent(owner.id(), id -> new ArrayList<>())
                    .add(new GroundStub(ground, number, port, words));
            hanging.add(ground.id());
            stubLines.add(number);
        }
    }

    List<SizedSymbol> sized() {
        double loadWidth =
                diagram.symbols().stream()
                        .filter(symbol -> symbol.glyph() == Glyph.LOAD)
                        .mapToDouble(BoxShape::likedWidth)
                        .max()
                        .orElse(0);
        return diagram.symbols().stream()
                .filter(symbol -> !hanging.contains(symbol.id()))
                .map(
                        symbol ->
                                new SizedSymbol(
                                        symbol,
                                        shape(symbol, loadWidth),
                                        List.copyOf(stubsOf.getOrDefault(symbol.id(), List.of()))))
                .toList();
    }

    private SymbolShape shape(DiagramSymbol symbol, double loadWidth) {
        return switch (symbol.glyph().form) {
            case INLINE -> InlineShape.of(symbol, usedPorts(symbol));
            case BOX ->
                    symbol.glyph() == Glyph.LOAD
                            ? BoxShape.load(symbol, loadWidth)
                            : BoxShape.controller(symbol);
            case BAR, GROUND -> BarShape.of(symbol);
        };
    }

    private List<Port> usedPorts(DiagramSymbol symbol) {
        Set<String> used = new HashSet<>();
        for (int number : linesOf.getOrDefault(symbol.id(), List.of())) {
            DiagramLine line = diagram.lines().get(number);
            if (line.fromSymbol().equals(symbol.id())) {
                used.add(line.fromPort());
            }
            if (line.toSymbol().equals(symbol.id())) {
                used.add(line.toPort());
            }
        }
        return symbol.ports().stream()
                .filter(port -> port.loose() || used.contains(port.name()))
                .toList();
    }

    /** Numbers of the lines that need a route, in the diagram's order. */
    List<Integer> routed() {
        List<Integer> routed = new ArrayList<>();
        for (int i = 0; i < diagram.lines().size(); i++) {
            if (!stubLines.contains(i)) {
                routed.add(i);
            }
        }
        return routed;
    }

    /** Whether no line ends at the symbol, and nothing frames it. */
    boolean isLoose(DiagramSymbol symbol) {
        return !linesOf.containsKey(symbol.id()) && symbol.group().isEmpty();
    }

    /** Whether a line leaves the symbol for another, stubs aside. */
    boolean feedsSomething(DiagramSymbol symbol) {
        return linesOf.getOrDefault(symbol.id(), List.of()).stream()
                .filter(number -> !stubLines.contains(number))
                .anyMatch(number -> diagram.lines().get(number).fromSymbol().equals(symbol.id()));
    }

    boolean fedBySomething(DiagramSymbol symbol) {
        return linesOf.getOrDefault(symbol.id(), List.of()).stream()
                .filter(number -> !stubLines.contains(number))
                .anyMatch(number -> diagram.lines().get(number).toSymbol().equals(symbol.id()));
    }

    DiagramLine line(int number) {
        return diagram.lines().get(number);
    }

    DiagramSymbol symbol(String id) {
        DiagramSymbol symbol = symbols.get(id);
        if (symbol == null) {
            throw new IllegalStateException(id + " is no symbol of the diagram");
        }
        return symbol;
    }

    static Port port(DiagramSymbol symbol, String name) {
        return symbol.ports().stream()
                .filter(port -> port.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException(symbol.id() + " has no port " + name));
    }
}

package stillturning.report.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/** Diagrams of any shape, with names short, long, empty and foreign. */
final class RandomDiagrams {
    private static final String[] NAMES = {
        "",
        "D1",
        "Fuel pump 2",
        "a <b> & \"c\" 'd'",
        "Бортовой компьютер",
        "主母線",
        "An unreasonably long name for a part that nobody would ever write on a drawing",
        "Unbreakablyunbreakablyunbreakablyunbreakablyunbreakably",
        "µΩ → ✓"
    };

    private static final List<MarkState> LOOKS = List.of(MarkState.values());

    private final SplittableRandom random;
    private final List<DiagramSymbol> symbols = new ArrayList<>();
    private final List<DiagramLine> lines = new ArrayList<>();

    private RandomDiagrams(long seed) {
        random = new SplittableRandom(seed);
    }

    static Diagram of(long seed, int size, boolean groups) {
        RandomDiagrams made = new RandomDiagrams(seed);
        Glyph[] glyphs = Glyph.values();
        for (int i = 0; i < size; i++) {
            made.symbols.add(
                    made.symbol("s" + i, glyphs[made.random.nextInt(glyphs.length)], groups));
        }
        for (int i = 1; i < size; i++) {
            made.join(made.random.nextInt(Math.max(0, i - 8), i), i);
        }
        for (int i = 0; i < size / 6; i++) {
            made.join(made.random.nextInt(size), made.random.nextInt(size));
        }
        return new Diagram("r", made.name(), made.symbols, made.lines);
    }

    private String name() {
        return NAMES[random.nextInt(NAMES.length)];
    }

    private DiagramSymbol symbol(String id, Glyph glyph, boolean groups) {
        List<Port> ports = new ArrayList<>();
        ports.add(new Port("in", Side.WEST, random.nextInt(3) == 0 ? name() : ""));
        ports.add(new Port("out", Side.EAST, random.nextInt(3) == 0 ? name() : ""));
        if (random.nextInt(3) == 0) {
            ports.add(new Port("coil", random.nextBoolean() ? Side.SOUTH : Side.NORTH));
        }
        if (random.nextInt(4) == 0) {
            ports.add(new Port("in 2", Side.WEST, "B"));
        }
        Optional<String> group =
                groups && random.nextInt(3) == 0
                        ? Optional.of("group " + random.nextInt(3))
                        : Optional.empty();
        MarkState look = LOOKS.get(random.nextInt(LOOKS.size()));
        return new DiagramSymbol(id, glyph, name(), name(), ports, group, look);
    }

    private void join(int from, int to) {
        DiagramSymbol a = symbols.get(from);
        DiagramSymbol b = symbols.get(to);
        List<Port> ends = b.ports().stream().filter(port -> !port.name().equals("out")).toList();
        Port end = ends.get(random.nextInt(ends.size()));
        String label = random.nextBoolean() ? "" : name();
        MarkState look = LOOKS.get(random.nextInt(LOOKS.size()));
        lines.add(new DiagramLine(a.id(), "out", b.id(), end.name(), label, look));
    }
}

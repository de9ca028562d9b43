package stillturning.report.oneline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;

/**
 * A candidate at a glance: its sources, buses and what can part them, with all loads of the engine
 * as one box and all others as another. What lies in a line is left out, and lines that then lead
 * the same way are one.
 */
public final class SmallDrawing {

    private static final String IN = "in";
    private static final String OUT = "out";
    private static final String ENGINE = "engine-loads";
    private static final String OTHERS = "other-loads";

    /** What tells one architecture from another. */
    private static final Set<Glyph> KEPT =
            Set.of(
                    Glyph.BATTERY,
                    Glyph.ALTERNATOR,
                    Glyph.BUS,
                    Glyph.CONTACTOR_OPEN,
                    Glyph.SWITCH_OPEN,
                    Glyph.DIODE,
                    Glyph.CONVERTER);

    /** A box with more lines than this shares power out; one with fewer guards something. */
    private static final int SHARES = 4;

    private final Diagram full;
    private final Set<String> engineLoads;
    private final Map<String, DiagramSymbol> kept = new LinkedHashMap<>();
    private final Map<String, List<String>> onward = new HashMap<>();
    private final Map<String, DiagramSymbol> all = new HashMap<>();

    private SmallDrawing(Diagram full, Set<String> engineLoads) {
        this.full = full;
        this.engineLoads = engineLoads;
        full.symbols().forEach(s -> all.put(s.id(), s));
    }

    /**
     * The small diagram.
     *
     * @param id prefix of the names inside the picture
     */
    public static Diagram of(String id, Candidate candidate, Study study) {
        return new SmallDrawing(
                        CandidateDrawing.of(candidate, study),
                        Set.copyOf(study.aircraft().engine().logic().loads()))
                .small(id);
    }

    private Diagram small(String id) {
        full.symbols().forEach(this::keep);
        full.lines().stream()
                .filter(line -> !coil(line))
                .forEach(
                        line ->
                                onward.computeIfAbsent(line.fromSymbol(), s -> new ArrayList<>())
                                        .add(line.toSymbol()));
        Set<List<String>> ways = new LinkedHashSet<>();
        for (String from : List.copyOf(kept.keySet())) {
            reached(from).forEach(to -> ways.add(List.of(from, to)));
        }
        List<DiagramLine> lines =
                ways.stream()
                        .filter(way -> !way.get(0).equals(way.get(1)))
                        .map(way -> new DiagramLine(way.get(0), OUT, way.get(1), IN, ""))
                        .toList();
        return new Diagram(id, "", joined(lines), lines);
    }

    private void keep(DiagramSymbol symbol) {
        boolean splice = symbol.glyph() == Glyph.BUS && symbol.label().isEmpty();
        if ((KEPT.contains(symbol.glyph()) && !splice) || sharesOut(symbol)) {
            kept.put(symbol.id(), bare(symbol.id(), symbol.glyph(), symbol.label()));
        }
    }

    private boolean sharesOut(DiagramSymbol symbol) {
        return symbol.glyph() == Glyph.CONTROLLER
                && full.lines().stream()
                                .filter(
                                        line ->
                                                line.fromSymbol().equals(symbol.id())
                                                        || line.toSymbol().equals(symbol.id()))
                                .count()
                        > SHARES;
    }

    private static DiagramSymbol bare(String id, Glyph glyph, String label) {
        return new DiagramSymbol(
                id, glyph, label, "", List.of(new Port(IN, Side.WEST), new Port(OUT, Side.EAST)));
    }

    /** Lines to a coil say what moves a contact, not where current goes. */
    private boolean coil(DiagramLine line) {
        return !horizontal(line.fromSymbol(), line.fromPort())
                || !horizontal(line.toSymbol(), line.toPort());
    }

    private boolean horizontal(String symbol, String port) {
        DiagramSymbol of = all.get(symbol);
        return of != null
                && of.ports().stream()
                        .anyMatch(p -> p.name().equals(port) && p.side().horizontal());
    }

    /** The next kept symbols on the ways from one. */
    private Set<String> reached(String from) {
        Set<String> found = new LinkedHashSet<>();
        Set<String> seen = new LinkedHashSet<>();
        Deque<String> open = new ArrayDeque<>(onward.getOrDefault(from, List.of()));
        while (!open.isEmpty()) {
            String at = open.removeFirst();
            if (!seen.add(at)) {
                continue;
            }
            if (kept.containsKey(at)) {
                found.add(at);
            } else if (load(at)) {
                found.add(engineLoads.contains(at) ? ENGINE : OTHERS);
            } else {
                open.addAll(onward.getOrDefault(at, List.of()));
            }
        }
        return found;
    }

    private boolean load(String symbol) {
        DiagramSymbol of = all.get(symbol);
        return of != null && of.glyph() == Glyph.LOAD;
    }

    /** Symbols at which a line ends, and the boxes of the loads. */
    private List<DiagramSymbol> joined(List<DiagramLine> lines) {
        Set<String> ends = new LinkedHashSet<>();
        lines.forEach(line -> ends.addAll(List.of(line.fromSymbol(), line.toSymbol())));
        List<DiagramSymbol> symbols = new ArrayList<>();
        kept.values().stream().filter(s -> ends.contains(s.id())).forEach(symbols::add);
        if (ends.contains(ENGINE)) {
            symbols.add(bare(ENGINE, Glyph.LOAD, "\u25C6 engine"));
        }
        if (ends.contains(OTHERS)) {
            symbols.add(bare(OTHERS, Glyph.LOAD, "other loads"));
        }
        return symbols;
    }
}

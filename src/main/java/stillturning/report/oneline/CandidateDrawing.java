package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.HalfDrawn;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.quantity.Formats;
import stillturning.report.drawing.diagram.Diagram;
import stillturning.report.drawing.diagram.DiagramLine;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Port;
import stillturning.report.drawing.diagram.Side;
import stillturning.report.oneline.DrawnCandidate.DrawnStrand;
import stillturning.report.oneline.DrawnCandidate.Meaning;
import stillturning.report.oneline.Piece.PiecePort;

/** A candidate as a one-line diagram: sources left, loads right, wires as lines. */
public final class CandidateDrawing {

    private static final String BUS_IN = "in";
    private static final String BUS_OUT = "out";

    private final Candidate candidate;
    private final CandidateMetal metal;
    private final List<DiagramSymbol> symbols = new ArrayList<>();
    private final Map<String, Meaning> meanings = new HashMap<>();
    private final List<Stretch> stretches = new ArrayList<>();
    private final Map<Integer, List<End>> endsByNet = new TreeMap<>();
    private final Set<Wire> atSymbol = new HashSet<>();
    private final Set<String> buses = new HashSet<>();

    /** A port of a symbol; the side is empty on a bus, which takes lines on both. */
    private record End(String symbol, String port, int net, boolean bus, Side side) {}

    /** A line and what it stands for. */
    private record Stretch(DiagramLine line, DrawnStrand strand) {}

    /** Wires whose values are not their own, and are not shown. */
    private final Set<String> unknown;

    private CandidateDrawing(Candidate candidate, Set<String> unknown) {
        this.candidate = candidate;
        this.unknown = unknown;
        metal = new CandidateMetal(candidate);
    }

    /**
     * The one-line diagram of a candidate. A symbol has its part's id, followed by a pin, contact
     * or coil where one part takes several symbols; returns are ground signs that carry the name of
     * the ground point; loads that the engine needs carry a mark.
     */
    public static Diagram of(Candidate candidate, Study study) {
        return drawn(candidate, study).diagram();
    }

    /** The same diagram, with what its symbols and lines stand for. */
    public static DrawnCandidate drawn(Candidate candidate, Study study) {
        CandidateDrawing drawing = new CandidateDrawing(candidate, Set.of());
        drawing.draw(Pieces.of(candidate, study, drawing.metal));
        return drawing.inRows();
    }

    /**
     * The diagram of a candidate at which somebody is at work: every part is there, joined or not,
     * and terminals that wait for a line show as rings.
     */
    public static DrawnCandidate atWork(HalfDrawn half) {
        Candidate shown =
                new Candidate(
                        half.id(),
                        half.title(),
                        "",
                        half.parts(),
                        half.joins(),
                        new Cockpit(half.flight(), Map.of(), List.of(), List.of()));
        CandidateDrawing drawing = new CandidateDrawing(shown, half.standIns());
        drawing.draw(Pieces.atWork(half, drawing.metal));
        drawing.addLooseGrounds();
        drawing.ringLooseEnds();
        return drawing.inRows();
    }

    private void draw(List<Piece> pieces) {
        pieces.stream().map(this::withWire).forEach(this::add);
        joinNets();
        drawWires();
    }

    /** Ground points at which nothing that is drawn returns. */
    private void addLooseGrounds() {
        Set<String> shown = new HashSet<>();
        meanings.values().forEach(f -> f.part().ifPresent(shown::add));
        candidate
                .all(Part.Role.GROUND)
                .filter(g -> !shown.contains(g.id()))
                .forEach(
                        g -> {
                            List<Port> ports = List.of(new Port(BUS_IN, Side.NORTH));
                            symbols.add(
                                    new DiagramSymbol(
                                            g.id(), Glyph.EARTH, g.tag().label(), "", ports));
                            meanings.put(
                                    g.id(),
                                    new Meaning(
                                            Optional.of(g.id()),
                                            List.of(metal.net(g, g.entry())),
                                            Optional.empty(),
                                            Map.of(BUS_IN, new Terminal(g.id(), g.entry()))));
                        });
    }

    private void ringLooseEnds() {
        Set<List<String>> used = new HashSet<>();
        for (Stretch stretch : stretches) {
            used.add(List.of(stretch.line().fromSymbol(), stretch.line().fromPort()));
            used.add(List.of(stretch.line().toSymbol(), stretch.line().toPort()));
        }
        symbols.replaceAll(s -> s.glyph() == Glyph.BUS ? s : ringed(s, used));
    }

    private static DiagramSymbol ringed(DiagramSymbol symbol, Set<List<String>> used) {
        return symbol.with(
                symbol.ports().stream()
                        .map(p -> used.contains(List.of(symbol.id(), p.name())) ? p : p.waiting())
                        .toList());
    }

    /** A ground point and what its stud is bolted or wired to. */
    public record Grounding(String ground, String leadsTo) {}

    /** How the ground points hang together. */
    public static List<Grounding> grounds(Candidate candidate) {
        CandidateMetal metal = new CandidateMetal(candidate);
        return candidate
                .all(Part.Role.GROUND)
                .map(point -> new Grounding(point.tag().label(), leadsTo(candidate, metal, point)))
                .toList();
    }

    private static String leadsTo(Candidate candidate, CandidateMetal metal, Part point) {
        if (point.exit().equals(point.entry())) {
            return "on the structure";
        }
        int lead = metal.net(point, point.exit());
        List<String> found =
                candidate
                        .wires()
                        .filter(w -> metal.net(w, "a") == lead || metal.net(w, "b") == lead)
                        .map(w -> wireTo(candidate, metal, w, lead))
                        .toList();
        return found.isEmpty() ? "insulated" : "insulated, by " + String.join(" and ", found);
    }

    private static String wireTo(Candidate candidate, CandidateMetal metal, Wire wire, int from) {
        int to = metal.net(wire, "a") == from ? metal.net(wire, "b") : metal.net(wire, "a");
        String other =
                candidate
                        .all(Part.Role.GROUND)
                        .filter(p -> metal.net(p, p.entry()) == to)
                        .map(p -> p.tag().label())
                        .findFirst()
                        .orElse("a source");
        return label(wire, ", ") + " to " + other;
    }

    private void add(Piece piece) {
        boolean bus = piece.glyph() == Glyph.BUS;
        List<Port> ports = new ArrayList<>();
        if (bus) {
            buses.add(piece.id());
            ports.add(new Port(BUS_IN, Side.WEST));
            ports.add(new Port(BUS_OUT, Side.EAST));
        }
        List<PiecePort> pins = piece.pins();
        for (PiecePort pin : pins) {
            Side side = pin.side().orElseGet(() -> side(pins, pin));
            if (!bus) {
                ports.add(new Port(pin.port(), side, pin.label()));
            }
            if (metal.ground(pin.net())) {
                addGround(piece, pin, side);
            } else {
                endsByNet
                        .computeIfAbsent(pin.net(), n -> new ArrayList<>())
                        .add(new End(piece.id(), pin.port(), pin.net(), bus, side));
            }
        }
        meanings.put(
                piece.id(),
                new Meaning(
                        Optional.of(piece.part()),
                        pins.stream().map(PiecePort::net).toList(),
                        Optional.empty(),
                        terminals(piece)));
        symbols.add(
                new DiagramSymbol(piece.id(), piece.glyph(), piece.label(), piece.detail(), ports));
    }

    private Map<String, Terminal> terminals(Piece piece) {
        if (piece.glyph() == Glyph.BUS) {
            Terminal bar =
                    new Terminal(piece.part(), candidate.part(piece.part()).orElseThrow().exit());
            return Map.of(BUS_IN, bar, BUS_OUT, bar);
        }
        Map<String, Terminal> terminals = new HashMap<>();
        piece.pins()
                .forEach(p -> terminals.put(p.port(), new Terminal(piece.part(), p.terminal())));
        return terminals;
    }

    /** Current goes from west to east; where it stands still, so does the order of terminals. */
    private Side side(List<PiecePort> pins, PiecePort pin) {
        PiecePort other = pins.get(0).equals(pin) ? pins.get(pins.size() > 1 ? 1 : 0) : pins.get(0);
        int order = Double.compare(metal.potential(pin.net()), metal.potential(other.net()));
        boolean first = pins.get(0).equals(pin);
        return order > 0 || (order == 0 && first) ? Side.WEST : Side.EAST;
    }

    private void addGround(Piece piece, PiecePort pin, Side side) {
        String id = piece.id() + "-" + pin.port() + "-ground";
        symbols.add(
                new DiagramSymbol(
                        id,
                        Glyph.EARTH,
                        groundName(pin.net()),
                        "",
                        List.of(new Port("in", opposite(side)))));
        meanings.put(
                id,
                new Meaning(
                        metal.groundAt(pin.net()).map(Part::id),
                        List.of(pin.net()),
                        Optional.of(piece.id()),
                        metal.groundAt(pin.net())
                                .map(g -> Map.of(BUS_IN, new Terminal(g.id(), g.entry())))
                                .orElse(Map.of())));
        stretches.add(
                new Stretch(
                        new DiagramLine(piece.id(), pin.port(), id, "in", ""),
                        new DrawnStrand(
                                metal.wireToGround(pin.net()).map(Wire::id),
                                pin.net(),
                                pin.net())));
    }

    /** The sign says that it is a ground; its name need not repeat the word. */
    private String groundName(int net) {
        String name = metal.groundName(net);
        String bare = name.replaceAll("(?i)[ -]*\\bground\\b", "").strip();
        return bare.isEmpty() ? name : bare;
    }

    private static Side opposite(Side side) {
        return switch (side) {
            case WEST -> Side.EAST;
            case EAST -> Side.WEST;
            case NORTH -> Side.SOUTH;
            case SOUTH -> Side.NORTH;
        };
    }

    private void joinNets() {
        endsByNet.forEach(
                (net, ends) -> {
                    End hub = hub(net, ends);
                    ends.stream()
                            .filter(e -> !e.equals(hub))
                            .forEach(e -> draw(hub, e, "", Optional.empty()));
                });
    }

    /** Wires between nets that are no grounds; two in a row meet at a joint. */
    private void drawWires() {
        for (Wire wire : candidate.wires().toList()) {
            int a = metal.net(wire, "a");
            int b = metal.net(wire, "b");
            if (!metal.ground(a) && !metal.ground(b)) {
                boolean forward = metal.potential(a) >= metal.potential(b);
                String label = atSymbol.contains(wire) ? "" : words(wire, " \u00B7 ");
                draw(hubOf(forward ? a : b), hubOf(forward ? b : a), label, Optional.of(wire));
            }
        }
    }

    private End hubOf(int net) {
        List<End> ends = endsByNet.computeIfAbsent(net, this::splice);
        return hub(net, ends);
    }

    private List<End> splice(int net) {
        String id = "splice-" + net;
        meanings.put(id, new Meaning(Optional.empty(), List.of(net), Optional.empty(), Map.of()));
        symbols.add(
                new DiagramSymbol(
                        id,
                        Glyph.BUS,
                        "",
                        "",
                        List.of(new Port(BUS_IN, Side.WEST), new Port(BUS_OUT, Side.EAST))));
        return new ArrayList<>(List.of(new End(id, BUS_IN, net, true, Side.WEST)));
    }

    /** The end from which the others of a net are drawn: a bus, else one that gives current. */
    private static End hub(int net, List<End> ends) {
        return ends.stream()
                .min(Comparator.comparingInt(e -> e.bus() ? 0 : e.side() == Side.EAST ? 1 : 2))
                .orElseThrow(() -> new IllegalStateException("net " + net + " has no ends"));
    }

    private void draw(End one, End other, String label, Optional<Wire> wire) {
        boolean forward = gives(one) || (!gives(other) && (takes(other) || !takes(one)));
        End from = forward ? one : other;
        End to = forward ? other : one;
        DiagramLine line =
                new DiagramLine(
                        from.symbol(),
                        from.bus() ? BUS_OUT : from.port(),
                        to.symbol(),
                        to.bus() ? BUS_IN : to.port(),
                        label);
        stretches.add(new Stretch(line, new DrawnStrand(wire.map(Wire::id), from.net(), to.net())));
    }

    private static boolean gives(End end) {
        return !end.bus() && end.side() == Side.EAST;
    }

    private static boolean takes(End end) {
        return !end.bus() && end.side() != Side.EAST;
    }

    private String words(Wire wire, String between) {
        return unknown.contains(wire.id()) ? "?" : label(wire, between);
    }

    private static String label(Wire wire, String between) {
        return "AWG " + wire.cable().awg() + between + Formats.fixed(wire.metres(), 1) + " m";
    }

    /** Words at a symbol take less room than words at a line, so it names a wire of its own. */
    private Piece withWire(Piece piece) {
        List<PiecePort> able = List.of();
        if (piece.glyph().bearsWordsInLine()) {
            able = List.of(piece.pins().get(1), piece.pins().get(0));
        } else if (piece.glyph() == Glyph.LOAD) {
            able = piece.pins().stream().filter(Piece.PiecePort::unlabelledInput).toList();
        }
        for (PiecePort pin : able) {
            Optional<Wire> wire = metal.onlyWireAt(pin.net());
            if (wire.isPresent() && atSymbol.add(wire.get())) {
                String words = words(wire.get(), ", ");
                return piece.detailed(
                        piece.detail().isEmpty() ? words : piece.detail() + ", " + words);
            }
        }
        return piece;
    }

    /** Puts rows in the order of their loads, so that the drawing keeps to it where it can. */
    private DrawnCandidate inRows() {
        Map<String, Integer> rows =
                LoadRows.of(symbols, stretches.stream().map(Stretch::line).toList(), buses);
        List<DiagramSymbol> symbolRows = new ArrayList<>(symbols);
        symbolRows.sort(Comparator.comparingInt(s -> rows.getOrDefault(s.id(), -1)));
        List<Stretch> lineRows = new ArrayList<>(stretches);
        lineRows.sort(Comparator.comparingInt(l -> rows.getOrDefault(l.line().toSymbol(), -1)));
        Diagram diagram =
                new Diagram(
                        "drawing-" + candidate.id().replaceAll("[^A-Za-z0-9]", "-"),
                        candidate.title(),
                        symbolRows,
                        lineRows.stream().map(Stretch::line).toList());
        return new DrawnCandidate(
                diagram, meanings, lineRows.stream().map(Stretch::strand).toList());
    }
}

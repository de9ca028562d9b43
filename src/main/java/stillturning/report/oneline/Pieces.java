package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.model.Candidate;
import stillturning.model.HalfDrawn;
import stillturning.model.Study;
import stillturning.parts.Part;
import stillturning.parts.Symbol;
import stillturning.parts.Symbol.Figure;
import stillturning.parts.Symbol.PinEdge;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Side;

/** The symbols of a candidate, as its parts say how they are drawn. */
final class Pieces {

    /** Stands before the name of a load that the engine needs. */
    static final String ENGINE_MARK = "\u25C6";

    private static final String UNKNOWN = "?";

    private final CandidateMetal metal;
    private final Set<String> engineLoads;
    private final Set<Integer> usedNets = new HashSet<>();
    private final List<Piece> pieces = new ArrayList<>();

    /** Whether what nothing is joined to is shown too. */
    private final boolean atWork;

    /** Parts whose values are not their own, and are not shown. */
    private final Set<String> standIns;

    private Pieces(
            List<Part> parts,
            CandidateMetal metal,
            List<String> engineLoads,
            boolean atWork,
            Set<String> standIns) {
        this.metal = metal;
        this.atWork = atWork;
        this.standIns = standIns;
        this.engineLoads = Set.copyOf(engineLoads);
        Set<Integer> seen = new HashSet<>();
        for (Part part : parts) {
            for (String terminal : part.terminals()) {
                int net = metal.net(part, terminal);
                if (!seen.add(net)) {
                    usedNets.add(net);
                }
            }
        }
    }

    static List<Piece> of(Candidate candidate, Study study, CandidateMetal metal) {
        List<String> engineLoads = study.aircraft().engine().logic().loads();
        return new Pieces(candidate.parts(), metal, engineLoads, false, Set.of())
                .all(candidate.parts());
    }

    /** Those of a candidate at which somebody is at work: nothing is left out. */
    static List<Piece> atWork(HalfDrawn half, CandidateMetal metal) {
        return new Pieces(half.parts(), metal, half.engineLoads(), true, half.standIns())
                .all(half.parts());
    }

    private List<Piece> all(List<Part> parts) {
        parts.forEach(this::add);
        return List.copyOf(pieces);
    }

    /** At work, a part of many ways shows one more, for the next line. */
    private void add(Part part) {
        boolean spare = atWork;
        for (Symbol symbol : part.symbols()) {
            long used = symbol.pins().stream().filter(pin -> used(part, pin)).count();
            boolean unused = used == 0;
            boolean drawn =
                    switch (symbol.when()) {
                        case ALWAYS -> true;
                        case JOINED -> (atWork || !unused) && !onOwnPins(part, symbol);
                        case LEADS_THROUGH ->
                                used == symbol.pins().size() || (unused ? spare : atWork);
                        case FEEDS_OWN_COIL -> metal.feedsItsOwnCoil(part);
                        case COIL_FED_ELSEWHERE -> !metal.feedsItsOwnCoil(part);
                    };
            if (drawn) {
                pieces.add(piece(part, symbol, unused));
            }
            spare &= !unused;
        }
    }

    private boolean used(Part part, Symbol.Pin pin) {
        return usedNets.contains(metal.net(part, pin.terminal()));
    }

    private boolean onOwnPins(Part part, Symbol symbol) {
        Set<Integer> nets = nets(part, symbol);
        return part.symbols().stream()
                .filter(other -> !other.equals(symbol))
                .anyMatch(other -> !Collections.disjoint(nets(part, other), nets));
    }

    private Set<Integer> nets(Part part, Symbol symbol) {
        return symbol.pins().stream()
                .map(pin -> metal.net(part, pin.terminal()))
                .collect(Collectors.toSet());
    }

    private Piece piece(Part part, Symbol symbol, boolean unused) {
        boolean closed =
                symbol.contact().map(contact -> metal.closedInFlight(part, contact)).orElse(true);
        boolean known = symbol.figure() == Figure.CONSUMER || !standIns.contains(part.id());
        return new Piece(
                symbol.name().isEmpty() ? part.id() : part.id() + "-" + symbol.name(),
                part.id(),
                glyph(symbol.figure(), closed),
                label(part, symbol, unused),
                known ? symbol.detail() : UNKNOWN,
                symbol.pins().stream()
                        .filter(pin -> drawn(part, pin))
                        .map(pin -> pin(part, pin))
                        .toList());
    }

    /** A protector is known by its feed, so its rating says enough, once it is in one. */
    private String label(Part part, Symbol symbol, boolean unused) {
        boolean alone = atWork && unused;
        if (symbol.figure().knownByItsFeed() && !alone) {
            return "";
        }
        boolean engine = engineLoads.contains(part.id());
        return engine ? ENGINE_MARK + " " + symbol.label() : symbol.label();
    }

    private boolean drawn(Part part, Symbol.Pin pin) {
        return switch (pin.when()) {
            case ALWAYS -> true;
            case JOINED, LEADS_THROUGH -> atWork || used(part, pin);
            case FEEDS_OWN_COIL -> metal.feedsItsOwnCoil(part);
            case COIL_FED_ELSEWHERE -> !metal.feedsItsOwnCoil(part);
        };
    }

    private Piece.PiecePort pin(Part part, Symbol.Pin pin) {
        int net = metal.net(part, pin.terminal());
        return new Piece.PiecePort(
                net, pin.port(), side(pin.edge(), net), pin.words(), pin.terminal());
    }

    private Optional<Side> side(PinEdge edge, int net) {
        return switch (edge) {
            case LEFT -> Optional.of(Side.WEST);
            case RIGHT -> Optional.of(Side.EAST);
            case BELOW -> Optional.of(Side.SOUTH);
            case RETURN -> Optional.of(metal.ground(net) ? Side.EAST : Side.WEST);
            case BY_CURRENT -> Optional.empty();
        };
    }

    private static Glyph glyph(Figure figure, boolean closed) {
        return switch (figure) {
            case BATTERY -> Glyph.BATTERY;
            case ALTERNATOR -> Glyph.ALTERNATOR;
            case CONVERTER -> Glyph.CONVERTER;
            case BUS -> Glyph.BUS;
            case CONTACTOR -> closed ? Glyph.CONTACTOR_CLOSED : Glyph.CONTACTOR_OPEN;
            case SWITCH -> closed ? Glyph.SWITCH_CLOSED : Glyph.SWITCH_OPEN;
            case DIODE -> Glyph.DIODE;
            case FUSE -> Glyph.FUSE;
            case BREAKER -> closed ? Glyph.BREAKER_CLOSED : Glyph.BREAKER_OPEN;
            case CONNECTOR -> Glyph.CONNECTOR;
            case CONSUMER -> Glyph.LOAD;
            case BOX -> Glyph.CONTROLLER;
        };
    }
}

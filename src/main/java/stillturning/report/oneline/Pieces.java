package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.HalfDrawn;
import stillturning.model.Study;
import stillturning.parts.Alternator;
import stillturning.parts.Battery;
import stillturning.parts.Breaker;
import stillturning.parts.Bus;
import stillturning.parts.Connector;
import stillturning.parts.Contactor;
import stillturning.parts.DcConverter;
import stillturning.parts.Diode;
import stillturning.parts.Fuse;
import stillturning.parts.Load;
import stillturning.parts.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.SolidStateController;
import stillturning.parts.Switch;
import stillturning.parts.element.Element;
import stillturning.parts.element.Guard.Action;
import stillturning.quantity.Formats;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.drawing.diagram.Side;

/** The symbols of a candidate: one for most parts, several where that reads better. */
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

    private void add(Part part) {
        if (part instanceof Battery battery) {
            addBattery(battery);
        } else if (part instanceof Alternator alternator) {
            addAlternator(alternator);
        } else if (part instanceof Bus bus) {
            addBus(bus);
        } else if (part instanceof Load load) {
            addLoad(load);
        } else if (part instanceof SolidStateController controller) {
            addController(controller);
        } else if (part instanceof DcConverter || part instanceof OvervoltageGuard) {
            addThreeEnded(part);
        } else if (part instanceof Contactor contactor) {
            addContactor(contactor);
        } else {
            addInline(part);
        }
    }

    private void addBattery(Battery battery) {
        add(
                piece(battery, Glyph.BATTERY, Formats.ampHours(battery.capacity().coulombs()))
                        .pin("plus", metal.net(battery, "plus"), Side.EAST)
                        .pin("minus", metal.net(battery, "minus"), Side.WEST));
    }

    /** The field is fed from the loads' side, so it gets a box of its own there. */
    private void addAlternator(Alternator alternator) {
        String amps = amps(alternator.output().largestAmps());
        add(
                piece(alternator, Glyph.ALTERNATOR, amps)
                        .pin("output", metal.net(alternator, "output"), Side.EAST)
                        .pin("case", metal.net(alternator, "case"), Side.WEST));
        String name = "field of " + alternator.tag().label();
        int field = metal.net(alternator, "field");
        if ((atWork || usedNets.contains(field)) && field != metal.net(alternator, "output")) {
            add(
                    new Piece.Of(alternator.id() + "-field", alternator.id(), Glyph.LOAD, name, "")
                            .pin("plus", field, Side.WEST)
                            .called("field"));
        }
    }

    private void addBus(Bus bus) {
        Piece.Of piece = piece(bus, Glyph.BUS, "");
        bus.terminals().forEach(terminal -> piece.free(terminal, metal.net(bus, terminal)));
        add(piece);
    }

    private void addLoad(Load load) {
        String name = load.tag().label();
        Piece.Of piece =
                new Piece.Of(
                        load.id(),
                        load.id(),
                        Glyph.LOAD,
                        engineLoads.contains(load.id()) ? ENGINE_MARK + " " + name : name,
                        amps(load.demand().amps()));
        for (String input : load.inputs()) {
            String words = load.inputs().size() > 1 ? input : "";
            piece.pin(input, metal.net(load, input), Side.WEST, words);
        }
        add(piece.pin("minus", metal.net(load, "minus"), Side.EAST));
    }

    private void addController(SolidStateController controller) {
        Piece.Of piece =
                piece(controller, Glyph.CONTROLLER, "")
                        .pin("supply", metal.net(controller, "supply"), Side.WEST, "supply")
                        .pin("ground", metal.net(controller, "ground"), Side.SOUTH);
        for (int n = 1; n <= controller.outputs().size(); n++) {
            String terminal = SolidStateController.outputName(n);
            int net = metal.net(controller, terminal);
            if (atWork || usedNets.contains(net)) {
                double trip = controller.outputs().get(n - 1).trip().ratedAmps();
                piece.pin(terminal, net, Side.EAST, n + " \u00B7 " + amps(trip));
            }
        }
        add(piece);
    }

    private void addThreeEnded(Part part) {
        Piece.Of piece =
                part instanceof DcConverter converter
                        ? piece(part, Glyph.CONVERTER, volts(converter.rating().setVolts()))
                        : piece(part, Glyph.CONTROLLER, guardDetail(part));
        add(
                piece.pin("in", metal.net(part, "in"), Side.WEST)
                        .pin("out", metal.net(part, "out"), Side.EAST)
                        .pin("minus", metal.net(part, "minus"), Side.SOUTH));
    }

    private static String guardDetail(Part part) {
        if (part instanceof OvervoltageGuard guard) {
            boolean shorts = guard.trip().action() == Action.SHORTS;
            return (shorts ? "shorts at " : "opens at ") + volts(guard.trip().volts());
        }
        return "";
    }

    /**
     * A coil that its own contact side feeds is drawn at the contactor; one that is fed from
     * elsewhere is a row of its own among the loads.
     */
    private void addContactor(Contactor contactor) {
        int plus = metal.net(contactor, "coil-plus");
        int minus = metal.net(contactor, "coil-minus");
        boolean own = metal.feedsItsOwnCoil(contactor);
        boolean closed =
                contactor.elements().stream()
                        .filter(e -> e.passage() != Element.Passage.NONE)
                        .anyMatch(e -> metal.closedInFlight(contactor, e));
        Piece.Of contact =
                piece(contactor, closed ? Glyph.CONTACTOR_CLOSED : Glyph.CONTACTOR_OPEN, "")
                        .free("in", metal.net(contactor, "in"))
                        .free("out", metal.net(contactor, "out"));
        if (own) {
            contact.pin("coil-minus", minus, Side.SOUTH);
        } else {
            add(
                    new Piece.Of(
                                    contactor.id() + "-coil",
                                    contactor.id(),
                                    Glyph.LOAD,
                                    "coil of " + contactor.tag().label(),
                                    "")
                            .pin("coil-plus", plus, Side.WEST)
                            .pin("coil-minus", minus, metal.ground(minus) ? Side.EAST : Side.WEST));
        }
        add(contact);
    }

    /**
     * One symbol for each pair of terminals that the part joins and that something is joined to. At
     * work, a part of many ways shows one more, for the next line.
     */
    private void addInline(Part part) {
        List<Element> ways =
                part.elements().stream()
                        .filter(e -> e.passage() != Element.Passage.NONE)
                        .filter(e -> !isBare(part))
                        .toList();
        boolean spare = atWork;
        for (Element way : ways) {
            boolean from = usedNets.contains(metal.net(part, way.from()));
            boolean to = usedNets.contains(metal.net(part, way.to()));
            boolean unused = !from && !to;
            if ((from && to) || (atWork && !unused) || (spare && unused)) {
                addWay(part, way, ways.size() == 1);
            }
            spare &= !unused;
        }
    }

    private void addWay(Part part, Element way, boolean only) {
        Piece.Of piece =
                new Piece.Of(
                        only ? part.id() : part.id() + "-" + way.name().replace(' ', '-'),
                        part.id(),
                        glyph(part, way),
                        label(part, way, only ? "" : " " + way.name()),
                        standIns.contains(part.id()) ? UNKNOWN : rating(part));
        int from = metal.net(part, way.from());
        int to = metal.net(part, way.to());
        if (part instanceof Diode) {
            piece.pin("in", from, Side.WEST).called(way.from());
            add(piece.pin("out", to, Side.EAST).called(way.to()));
        } else {
            piece.free("in", from).called(way.from());
            add(piece.free("out", to).called(way.to()));
        }
    }

    /** Wires are lines and ground points are signs on other symbols. */
    private static boolean isBare(Part part) {
        return !(part instanceof Breaker
                || part instanceof Fuse
                || part instanceof Diode
                || part instanceof Switch
                || part instanceof Connector);
    }

    private Glyph glyph(Part part, Element way) {
        if (part instanceof Breaker breaker) {
            String lever = breaker.id();
            return metal.pulledInFlight(lever) ? Glyph.BREAKER_OPEN : Glyph.BREAKER_CLOSED;
        } else if (part instanceof Fuse) {
            return Glyph.FUSE;
        } else if (part instanceof Diode) {
            return Glyph.DIODE;
        } else if (part instanceof Connector) {
            return Glyph.CONNECTOR;
        }
        return metal.closedInFlight(part, way) ? Glyph.SWITCH_CLOSED : Glyph.SWITCH_OPEN;
    }

    /** A protector is known by its feed, so its rating says enough, once it is in one. */
    private String label(Part part, Element way, String more) {
        boolean alone =
                atWork
                        && !usedNets.contains(metal.net(part, way.from()))
                        && !usedNets.contains(metal.net(part, way.to()));
        boolean protector = part instanceof Breaker || part instanceof Fuse;
        return protector && !alone ? "" : part.tag().label() + more;
    }

    private static String rating(Part part) {
        if (part instanceof Breaker breaker) {
            return amps(breaker.ratedAmps());
        }
        return part instanceof Fuse fuse ? amps(fuse.ratedAmps()) : "";
    }

    private Piece.Of piece(Part part, Glyph glyph, String detail) {
        String words = standIns.contains(part.id()) ? UNKNOWN : detail;
        return new Piece.Of(part.id(), part.id(), glyph, part.tag().label(), words);
    }

    private void add(Piece.Of piece) {
        pieces.add(piece.made());
    }

    private static String amps(double amps) {
        return plain(amps) + " A";
    }

    private static String volts(double volts) {
        return plain(volts) + " V";
    }

    /** As few digits as the value was likely written with. */
    private static String plain(double value) {
        String text = Formats.fixed(value, 2);
        return text.replaceAll("\\.?0+$", "");
    }
}

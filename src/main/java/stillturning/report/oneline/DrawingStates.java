package stillturning.report.oneline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.failure.Failure;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.parts.element.Tolerance;
import stillturning.report.drawing.MarkState;
import stillturning.report.drawing.diagram.DiagramSymbol;
import stillturning.report.drawing.diagram.Glyph;
import stillturning.report.oneline.DrawnCandidate.DrawnStrand;
import stillturning.report.oneline.DrawnCandidate.Meaning;
import stillturning.story.Snapshot;

/**
 * How a drawn candidate looks at any instant after a failure. A load is live while it works,
 * starved while it rides through with less than its minimum, on backup while it works on a battery
 * of its own, and dark while it does not work, whatever stands at its terminals.
 */
public final class DrawingStates {

    private final NetStates nets;
    private final Withstand withstand;
    private final Set<String> hit = new HashSet<>();
    private final Map<String, List<String>> elementsOf = new HashMap<>();
    private final List<Standing> standings = new ArrayList<>();
    private final List<Stretch> stretches = new ArrayList<>();

    /**
     * States of what is drawn.
     *
     * @param symbols by the id of a symbol
     * @param lines by the number of a line
     * @param glyphs by the id of a symbol, for those whose contacts can stand otherwise
     */
    public record ShownStates(
            Map<String, MarkState> symbols,
            Map<Integer, MarkState> lines,
            Map<String, Glyph> glyphs) {
        public ShownStates {
            symbols = Map.copyOf(symbols);
            lines = Map.copyOf(lines);
            glyphs = Map.copyOf(glyphs);
        }
    }

    /**
     * What decides how a symbol looks.
     *
     * @param load net of its return where it is a load
     * @param ways elements that lead from one of its nets to another
     * @param nets those of its ports; of a diode, the one that current comes from
     */
    private record Standing(
            DiagramSymbol symbol,
            Optional<String> part,
            Optional<Supplied> load,
            List<String> ways,
            List<Integer> nets) {

        boolean carries(Snapshot frame) {
            return ways.stream().anyMatch(way -> !frame.lacks(way) && !frame.open(way));
        }

        Optional<Glyph> glyph(Snapshot frame) {
            boolean closed = nets.stream().distinct().count() == 1 || carries(frame);
            return symbol.glyph().with(closed);
        }
    }

    /** A load and the net of its return. */
    private record Supplied(Load load, int minus) {}

    /** A line, and what serves as its ground where it ends at the sign of one. */
    private record Stretch(
            int number, DrawnStrand strand, Optional<Meaning> grounding, String sign) {}

    /**
     * @param drawn drawing of the candidate
     * @param failure what went wrong
     * @param before the candidate with nothing wrong
     */
    public DrawingStates(
            Candidate candidate, DrawnCandidate drawn, Failure failure, Snapshot before) {
        Circuit circuit = candidate.circuit(failure.hits());
        failure.hits().forEach(h -> hit.add(h.part()));
        this.withstand = new Withstand(candidate, circuit, before);
        this.nets = new NetStates(circuit, withstand, before);
        Map<String, List<Placed>> placedOf = new HashMap<>();
        for (Placed placed : circuit.placed()) {
            placedOf.computeIfAbsent(placed.part(), p -> new ArrayList<>()).add(placed);
        }
        placedOf.forEach(
                (part, all) -> elementsOf.put(part, all.stream().map(Placed::name).toList()));
        for (DiagramSymbol symbol : drawn.diagram().symbols()) {
            Meaning meaning = drawn.meaning(symbol.id());
            if (meaning.grounds().isEmpty()) {
                Optional<Part> part = meaning.part().flatMap(candidate::part);
                List<Placed> own =
                        meaning.part()
                                .map(p -> placedOf.getOrDefault(p, List.of()))
                                .orElse(List.of());
                standings.add(standing(symbol, meaning, part, own, circuit));
            }
        }
        for (int i = 0; i < drawn.strands().size(); i++) {
            String sign = drawn.diagram().lines().get(i).toSymbol();
            Meaning end = drawn.meaning(sign);
            stretches.add(
                    new Stretch(
                            i,
                            drawn.strands().get(i),
                            Optional.of(end).filter(f -> f.grounds().isPresent()),
                            sign));
        }
    }

    private static Standing standing(
            DiagramSymbol symbol,
            Meaning meaning,
            Optional<Part> part,
            List<Placed> own,
            Circuit circuit) {
        List<String> ways =
                own.stream()
                        .filter(p -> leads(p.element()) && p.from() != p.to())
                        .filter(p -> meaning.nets().contains(p.from()))
                        .filter(p -> meaning.nets().contains(p.to()))
                        .map(Placed::name)
                        .toList();
        Optional<Supplied> load = Optional.empty();
        List<Integer> nets = meaning.nets();
        if (part.isPresent() && part.get() instanceof Load supplied) {
            load = Optional.of(new Supplied(supplied, circuit.net(supplied.id(), "minus")));
            nets = supplied.inputs().stream().map(i -> circuit.net(supplied.id(), i)).toList();
        } else if (symbol.glyph() == Glyph.DIODE) {
            nets = nets.subList(0, 1);
        }
        return new Standing(symbol, meaning.part(), load, ways, nets);
    }

    private static boolean leads(Element element) {
        return element.passage() != Passage.NONE || element.role().isSource();
    }

    /** How everything looks at an instant. */
    public ShownStates at(Snapshot frame) {
        MarkState[] ofNets = nets.at(frame);
        Map<String, MarkState> symbols = new HashMap<>();
        Map<String, Glyph> glyphs = new HashMap<>();
        for (Standing standing : standings) {
            symbols.put(standing.symbol.id(), look(standing, ofNets, frame));
            standing.glyph(frame).ifPresent(glyph -> glyphs.put(standing.symbol.id(), glyph));
        }
        Map<Integer, MarkState> lines = new HashMap<>();
        for (Stretch stretch : stretches) {
            boolean cut = stretch.strand.wire().filter(wire -> failed(wire, frame)).isPresent();
            MarkState look =
                    stretch.grounding.isPresent()
                            ? ground(stretch, symbols, frame)
                            : highest(stretch.strand, ofNets, frame);
            lines.put(stretch.number, cut ? MarkState.FAILED : look);
        }
        return new ShownStates(symbols, lines, glyphs);
    }

    private MarkState look(Standing standing, MarkState[] ofNets, Snapshot frame) {
        if (standing.part.filter(part -> failed(part, frame)).isPresent()) {
            return MarkState.FAILED;
        } else if (standing.load.isPresent()) {
            return look(standing.load.get(), highest(standing.nets, frame), ofNets, frame);
        }
        boolean open = !standing.ways.isEmpty() && !standing.carries(frame);
        return open ? MarkState.DARK : ofNets[highest(standing.nets, frame)];
    }

    private MarkState look(Supplied supplied, int fed, MarkState[] ofNets, Snapshot frame) {
        return switch (frame.doing(supplied.load.id())) {
            case WORKS -> working(supplied, fed, ofNets, frame);
            case STARVED -> MarkState.STARVED;
            case RUNS, FALTERS, STOPPED, SWITCHED_OFF -> MarkState.DARK;
        };
    }

    private MarkState working(Supplied supplied, int fed, MarkState[] ofNets, Snapshot frame) {
        double volts = frame.volts(fed) - frame.volts(supplied.minus);
        if (withstand.exceeded(supplied.load, volts)) {
            return MarkState.OVER_VOLTAGE;
        }
        Tolerance tolerance = supplied.load.tolerance();
        boolean byItself = tolerance.ownBattery().isPresent() && volts < tolerance.minimumVolts();
        return byItself || ofNets[fed] == MarkState.ON_BACKUP
                ? MarkState.ON_BACKUP
                : MarkState.LIVE;
    }

    /** A return is as live as what it serves: it has no voltage that would say so. */
    private MarkState ground(Stretch stretch, Map<String, MarkState> symbols, Snapshot frame) {
        Meaning sign = stretch.grounding.orElseThrow();
        MarkState served = sign.grounds().map(symbols::get).orElse(MarkState.LIVE);
        MarkState look = served == MarkState.DARK ? MarkState.DARK : MarkState.LIVE;
        boolean loose = sign.part().filter(part -> failed(part, frame)).isPresent();
        symbols.put(stretch.sign, loose ? MarkState.FAILED : look);
        return look;
    }

    private boolean failed(String part, Snapshot frame) {
        return hit.contains(part)
                || elementsOf.getOrDefault(part, List.of()).stream()
                        .anyMatch(frame.states().gaveWay()::contains);
    }

    private static MarkState highest(DrawnStrand strand, MarkState[] ofNets, Snapshot frame) {
        return ofNets[highest(List.of(strand.fromNet(), strand.toNet()), frame)];
    }

    private static int highest(List<Integer> nets, Snapshot frame) {
        int highest = nets.get(0);
        for (int net : nets) {
            if (Math.abs(frame.volts(net)) > Math.abs(frame.volts(highest))) {
                highest = net;
            }
        }
        return highest;
    }
}

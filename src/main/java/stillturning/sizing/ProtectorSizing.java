package stillturning.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.failure.Failure;
import stillturning.model.wiring.MetalLines.MetalLine;
import stillturning.parts.Alteration.Added;
import stillturning.parts.FailureMode;
import stillturning.parts.Load;
import stillturning.parts.Wire;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Role;
import stillturning.sizing.Subject.Rated;
import stillturning.sizing.result.ProtectorSize;
import stillturning.sizing.result.ProtectorSize.InrushCheck;
import stillturning.sizing.result.ProtectorSize.WorstShort;
import stillturning.story.SteadyState;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;

/** Holds every protector against what it carries, lets through and has to interrupt. */
final class ProtectorSizing {

    /** Metal bolted on: less than any chafe. Common practice, no published source. */
    private static final double BOLTED_OHMS = 0.001;

    private final Subject subject;
    private final SteadyStates full;

    /** What flows with a net bolted to the structure: one answer for all that ends there. */
    private final Map<Integer, SteadyState> bolted = new HashMap<>();

    /**
     * @throws UntoldStory if the candidate has no steady state with its batteries full
     */
    ProtectorSizing(Subject subject) throws UntoldStory {
        this.subject = subject;
        this.full =
                new SteadyStates(
                        subject.study(),
                        Draws.full(subject.candidate()),
                        subject.study().goals().failurePhase());
    }

    List<ProtectorSize> all() throws UntoldStory {
        List<ProtectorSize> sizes = new ArrayList<>();
        for (Placed placed : subject.circuit().placed()) {
            if (placed.element().overload().isPresent() && inUse(placed)) {
                sizes.add(size(placed));
            }
        }
        return sizes;
    }

    /** A channel may be spare; a protector is fitted to be used. */
    private boolean inUse(Placed protector) {
        return protector.element().role() != Role.ELECTRONICS
                || subject.circuit().placed().stream()
                        .anyMatch(
                                p ->
                                        !p.equals(protector)
                                                && (p.from() == protector.to()
                                                        || p.to() == protector.to()));
    }

    private ProtectorSize size(Placed placed) throws UntoldStory {
        Rated rated = subject.rated(placed);
        Optional<MetalLine> line = lineOf(placed);
        return new ProtectorSize(
                rated.name(),
                rated.kind(),
                rated.amps(),
                subject.running(placed.part(), placed.element().name()),
                subject.survey().worst(placed.part(), placed.element().name()),
                line.flatMap(this::loadBehind).map(l -> inrush(l, rated)).orElse(NO_INRUSH),
                new WorstShort(faultAmps(placed), interrupts(placed)),
                line.map(subject.lines()::wiresIn).orElse(List.of()).stream()
                        .map(Wire::id)
                        .toList());
    }

    private static final InrushCheck NO_INRUSH = new InrushCheck(0, 0, Double.POSITIVE_INFINITY);

    private Optional<MetalLine> lineOf(Placed placed) {
        return subject.candidate()
                .wires()
                .map(w -> subject.lines().of(w.id()))
                .filter(l -> l.links().contains(placed))
                .findFirst();
    }

    private Optional<Load> loadBehind(MetalLine line) {
        return subject.candidate().loads().filter(l -> line.passes(l.id())).findFirst();
    }

    private InrushCheck inrush(Load load, Rated rated) {
        LoadNeed.Inrush asked =
                subject.study()
                        .aircraft()
                        .load(load.id())
                        .map(need -> need.use().inrush())
                        .orElse(LoadNeed.Inrush.NONE);
        return new InrushCheck(
                asked.amps(), asked.seconds(), rated.letsThroughAmps(asked.seconds()));
    }

    private OptionalDouble interrupts(Placed placed) {
        Optional<Double> known =
                Optional.ofNullable(subject.fit().interruptAmps().get(placed.part()));
        return known.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** Current through it with metal bolted from either of its ends to the structure (A). */
    private double faultAmps(Placed placed) throws UntoldStory {
        return Math.max(
                faultAmps(placed, placed.from(), placed.element().from()),
                faultAmps(placed, placed.to(), placed.element().to()));
    }

    private double faultAmps(Placed placed, int net, String end) throws UntoldStory {
        SteadyState flow = bolted.get(net);
        if (flow == null) {
            flow = full.instant(bolted(placed.part(), end));
            bolted.put(net, flow);
        }
        return Math.abs(flow.amps(placed.part(), placed.element().name()));
    }

    private static Failure bolted(String part, String end) {
        FailureMode mode =
                FailureMode.of(
                        "bolted",
                        new Added(new Conductor("bolt", end, Element.STRUCTURE, BOLTED_OHMS)));
        return new Failure(part + ": bolted", List.of(new Hit(part, mode)), Map.of());
    }
}

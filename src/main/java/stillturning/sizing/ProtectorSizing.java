package stillturning.sizing;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.model.Candidate.Hit;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Terminal;
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
import stillturning.sizing.result.ProtectorSize.Passes;
import stillturning.sizing.result.ProtectorSize.WorstShort;
import stillturning.story.SteadyState;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.SteadyStates;

/** Holds every protector against what it carries, lets through and has to interrupt. */
final class ProtectorSizing {

    /** Metal bolted on: less than any chafe. Common practice, no published source. */
    private static final double BOLTED_OHMS = 0.001;

    private static final String BOLT = "bolt";

    /** So much less than a limit needs no closer look, whatever loads take besides. */
    private static final double FAR_BELOW = 0.9;

    private static final double NO_OHMS_TO_SPEAK_OF = 1e-6;

    private final Subject subject;
    private final SurveyDepth reach;
    private final SteadyStates full;

    /** What flows with a net bolted to where returns meet: one answer for all that ends there. */
    private final Map<Integer, Bolted> bolted = new HashMap<>();

    /** How many elements end at each net. */
    private final Map<Integer, Integer> ends = new HashMap<>();

    /**
     * With a net bolted to where returns meet.
     *
     * @param amps through the bolt (A)
     */
    private record Bolted(SteadyState flow, double amps) {}

    /**
     * @throws UntoldStory if the candidate has no steady state with its batteries full
     */
    ProtectorSizing(Subject subject, SurveyDepth reach) throws UntoldStory {
        this.subject = subject;
        this.reach = reach;
        this.full =
                new SteadyStates(
                        subject.study(),
                        Draws.full(subject.candidate()),
                        subject.study().goals().failurePhase());
        for (Placed placed : subject.circuit().placed()) {
            ends.merge(placed.from(), 1, Integer::sum);
            ends.merge(placed.to(), 1, Integer::sum);
        }
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
        Optional<MetalLine> line = subject.lines().through(placed);
        return new ProtectorSize(
                rated.name(),
                rated.kind(),
                rated.amps(),
                subject.running(placed.part(), placed.element().name()),
                subject.survey().worst(placed.part(), placed.element().name()),
                new Passes(
                        line.flatMap(this::loadBehind).map(l -> inrush(l, rated)).orElse(NO_INRUSH),
                        start(placed, rated)),
                worstShort(placed, interrupts(placed)),
                line.map(subject.lines()::wiresIn).orElse(List.of()).stream()
                        .map(Wire::id)
                        .toList());
    }

    private static final InrushCheck NO_INRUSH = new InrushCheck(0, 0, Double.POSITIVE_INFINITY);

    private Optional<Load> loadBehind(MetalLine line) {
        return subject.lines().loadsIn(line).stream().findFirst();
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

    /** The worst while the starter turns with nothing wrong, so long as the study lets it turn. */
    private InrushCheck start(Placed placed, Rated rated) {
        InrushCheck worst = NO_INRUSH;
        for (Phase phase : subject.study().aircraft().phases()) {
            double amps =
                    Math.abs(
                            subject.survey()
                                    .rest(phase)
                                    .amps(placed.part(), placed.element().name()));
            if (subject.phases().starting(phase) && amps > worst.amps()) {
                double seconds = phase.seconds();
                worst = new InrushCheck(amps, seconds, rated.letsThroughAmps(seconds));
            }
        }
        return worst;
    }

    private OptionalDouble interrupts(Placed placed) {
        Optional<Double> known =
                Optional.ofNullable(subject.fit().interruptAmps().get(placed.part()));
        return known.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    /** Each short is a state of the whole candidate: none is computed that nothing is made of. */
    private WorstShort worstShort(Placed placed, OptionalDouble can) throws UntoldStory {
        boolean asked =
                reach == SurveyDepth.SINGLE_FAILURES
                        || (can.isPresent() && boltAmps(placed) > FAR_BELOW * can.getAsDouble());
        return new WorstShort(
                asked ? OptionalDouble.of(faultAmps(placed)) : OptionalDouble.empty(), can);
    }

    /**
     * Current through metal bolted from that of its ends where more meets to the structure (A). All
     * that comes through it with its other end bolted comes from there, against its own resistance
     * besides, so that it is no more. The lines of one bus share the answer.
     */
    private double boltAmps(Placed placed) throws UntoldStory {
        boolean from = ends.getOrDefault(placed.from(), 0) >= ends.getOrDefault(placed.to(), 0);
        Bolted flow =
                from
                        ? bolted(placed.part(), placed.from(), placed.element().from())
                        : bolted(placed.part(), placed.to(), placed.element().to());
        return Math.abs(flow.amps);
    }

    /** Current through it with metal bolted from either of its ends to where returns meet (A). */
    private double faultAmps(Placed placed) throws UntoldStory {
        return Math.max(
                faultAmps(placed, placed.from(), placed.element().from()),
                faultAmps(placed, placed.to(), placed.element().to()));
    }

    private double faultAmps(Placed placed, int net, String end) throws UntoldStory {
        SteadyState flow = bolted(placed.part(), net, end).flow;
        return Math.abs(flow.amps(placed.part(), placed.element().name()));
    }

    private Bolted bolted(String part, int net, String end) throws UntoldStory {
        Bolted known = bolted.get(net);
        if (known == null) {
            SteadyState flow = full.instant(bolted(part, end, meeting(net)));
            known = new Bolted(flow, flow.amps(part, BOLT));
            bolted.put(net, known);
        }
        return known;
    }

    private static Failure bolted(String part, String end, Optional<Terminal> meeting) {
        List<Hit> hits = new ArrayList<>(List.of(joined(part, BOLT, end, BOLTED_OHMS)));
        meeting.ifPresent(
                m -> hits.add(joined(m.part(), "returns", m.name(), NO_OHMS_TO_SPEAK_OF)));
        return new Failure(part + ": bolted", hits, Map.of());
    }

    private static Hit joined(String part, String name, String terminal, double ohms) {
        Conductor metal = new Conductor(name, terminal, Element.STRUCTURE, ohms);
        return new Hit(part, FailureMode.of("bolted", new Added(metal)));
    }

    /** Where the returns of a net meet, if not on the structure. */
    private Optional<Terminal> meeting(int net) {
        Circuit circuit = subject.circuit();
        int meeting = circuit.returns().of(net);
        return circuit.netOf().entrySet().stream()
                .filter(e -> meeting != 0 && e.getValue() == meeting)
                .map(Map.Entry::getKey)
                .findFirst();
    }
}

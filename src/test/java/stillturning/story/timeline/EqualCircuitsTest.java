package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import stillturning.bench.Bench;
import stillturning.bench.Effort;
import stillturning.model.Candidate;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Cable;
import stillturning.parts.Part;
import stillturning.parts.Wire;
import stillturning.parts.element.Conversion;
import stillturning.story.MotorStart;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.Trace;
import stillturning.story.UntoldStory;

/**
 * Two failures that leave the same conducting circuit are one state of the aircraft, and what
 * follows from them must be the same, however they are spelt.
 */
class EqualCircuitsTest {

    private static final int AIRCRAFT = Effort.cases(30, 1000);

    private static final double HORIZON_SECONDS = 600;

    /**
     * Where steps end may differ in the last digits; a voltage that hardly falls makes much of it.
     */
    private static final double SAME = 1e-5;

    /** An extreme between events falls on whichever end of a step is nearest. */
    private static final double NEAR = 1e-3;

    /** Groups of failures that are played of one aircraft. */
    private static final int GROUPS = 3;

    /** An aircraft of the lot whose sources have leads on both sides, for something to go wrong. */
    private static Candidate withLeads(Candidate candidate) {
        List<Part> parts = new ArrayList<>(candidate.parts());
        List<Join> joins = new ArrayList<>(candidate.joins());
        for (Part part : candidate.parts()) {
            if (!part.sourceTerminals().isEmpty()) {
                part.terminals().forEach(t -> lengthen(new Terminal(part.id(), t), parts, joins));
            }
        }
        return new Candidate(
                candidate.id(),
                candidate.title(),
                candidate.about(),
                parts,
                joins,
                candidate.cockpit());
    }

    private static void lengthen(Terminal terminal, List<Part> parts, List<Join> joins) {
        String id = terminal.part() + "-" + terminal.name() + "-lead";
        parts.add(new Wire(Bench.tag(id), Cable.awg("10").orElseThrow(), 0.5, 0.002));
        Terminal far = new Terminal(id, "b");
        joins.replaceAll(
                join ->
                        new Join(
                                join.one().equals(terminal) ? far : join.one(),
                                join.other().equals(terminal) ? far : join.other()));
        joins.add(new Join(terminal, new Terminal(id, "a")));
    }

    /** Elements that current can pass at all: what hangs on one end only is left out. */
    private static Set<Placed> conducting(Circuit circuit) {
        Set<Placed> left = new HashSet<>(circuit.placed());
        boolean pruned = true;
        while (pruned) {
            // meters have their minus on the structure, so what joins it matters
            Map<Integer, Integer> ends = new LinkedHashMap<>(Map.of(0, 1));
            for (Placed placed : left) {
                nets(circuit, placed).forEach(net -> ends.merge(net, 1, Integer::sum));
            }
            pruned = left.removeIf(p -> nets(circuit, p).stream().anyMatch(n -> alone(n, ends)));
        }
        return left;
    }

    private static boolean alone(int net, Map<Integer, Integer> ends) {
        return ends.getOrDefault(net, 0) < 2;
    }

    private static List<Integer> nets(Circuit circuit, Placed placed) {
        List<Integer> nets = new ArrayList<>(List.of(placed.from(), placed.to()));
        if (placed.element() instanceof Conversion conversion) {
            nets.add(circuit.net(placed.part(), conversion.output().plus()));
            nets.add(circuit.net(placed.part(), conversion.output().minus()));
        }
        return nets;
    }

    /** What is told of the parts that both have, without the name of the failure. */
    private record Told(List<String> events, List<Double> seconds, List<Double> extremes) {}

    private static Told told(Timeline timeline, RandomAircraft lot, Failure failure, Set<String> of)
            throws UntoldStory {
        // when a motor's start is asked about hangs on when all is quiet, the cut-off part included
        Story story =
                timeline.tell(failure, lot.setting.with(new MotorStart.Never()), HORIZON_SECONDS);
        List<StoryEvent> events =
                story.happenings().stream()
                        .filter(event -> event.kind() != Kind.FAILURE && of.contains(event.part()))
                        .toList();
        List<Double> seconds = new ArrayList<>();
        seconds.add(story.engine().endurance().seconds());
        events.forEach(event -> seconds.add(event.seconds()));
        List<Double> extremes = new ArrayList<>();
        // a story ends where nothing more can happen, and where that is seen is by the way
        double until = story.engine().endurance().seconds();
        for (Trace trace : story.traces()) {
            if (Double.isFinite(until) && of.contains(trace.name())) {
                DoubleSummaryStatistics values =
                        trace.points().stream()
                                .filter(point -> point.seconds() <= until)
                                .mapToDouble(Trace.TracePoint::value)
                                .summaryStatistics();
                extremes.add(values.getMin());
                extremes.add(values.getMax());
            }
        }
        List<String> words = events.stream().map(e -> e.part() + " " + e.words()).toList();
        return new Told(words, seconds, extremes);
    }

    private static void assertSame(Told one, Told other, String where) {
        assertEquals(one.events, other.events, where);
        assertSame(one.seconds, other.seconds, SAME, where);
        assertSame(one.extremes, other.extremes, NEAR, where);
    }

    private static void assertSame(
            List<Double> one, List<Double> other, double relative, String where) {
        for (int i = 0; i < one.size(); i++) {
            double left = one.get(i);
            double right = other.get(i);
            assertTrue(
                    left == right || Math.abs(left - right) <= relative * (1 + Math.abs(left)),
                    where + ": " + left + " and " + right + " of " + one);
        }
    }

    @Test
    void whatLeavesTheSameCircuitIsToldTheSame() throws UntoldStory {
        int pairs = 0;
        int batteries = 0;
        for (int seed = 0; seed < AIRCRAFT; seed++) {
            RandomAircraft lot = new RandomAircraft(seed);
            Candidate candidate = withLeads(lot.candidate);
            Timeline timeline = new Timeline(lot.study, candidate, lot.moment);
            int played = 0;
            for (List<Failure> group : alike(candidate, seed)) {
                if (group.size() > 1 && played++ < GROUPS) {
                    pairs++;
                    batteries += group.get(0).name().contains("battery") ? 1 : 0;
                    compare(seed, candidate, timeline, lot, group);
                }
            }
        }
        assertTrue(pairs > 2 * AIRCRAFT && batteries > AIRCRAFT / 2, pairs + ", " + batteries);
    }

    private static void compare(
            int seed,
            Candidate candidate,
            Timeline timeline,
            RandomAircraft lot,
            List<Failure> group)
            throws UntoldStory {
        Failure one = group.get(0);
        Failure other = group.get(1 + seed % (group.size() - 1));
        Set<Placed> conducting = conducting(candidate.circuit(one.hits()));
        // what happens to a part that is cut off, wholly or in part, is its own affair
        Set<String> of = candidate.parts().stream().map(Part::id).collect(Collectors.toSet());
        candidate.circuit().placed().stream()
                .filter(placed -> !conducting.contains(placed))
                .forEach(placed -> of.remove(placed.part()));
        of.addAll(List.of("engine", "shed", "tie"));
        of.add("main-bus");
        assertSame(
                told(timeline, lot, one, of),
                told(timeline, lot, other, of),
                "seed " + seed + ": " + one.name() + " against " + other.name());
    }

    /** Single failures by the circuit that they leave, in an order that the lot moves on. */
    private static List<List<Failure>> alike(Candidate candidate, int seed) {
        Map<Set<Placed>, List<Failure>> groups = new LinkedHashMap<>();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            Circuit circuit = candidate.circuit(failure.hits());
            if (failure.levers().isEmpty()) {
                groups.computeIfAbsent(conducting(circuit), c -> new ArrayList<>()).add(failure);
            }
        }
        List<List<Failure>> list = new ArrayList<>(groups.values());
        list.removeIf(group -> group.size() < 2);
        Collections.rotate(list, seed);
        return list;
    }
}

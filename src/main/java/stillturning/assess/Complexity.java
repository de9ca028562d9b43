package stillturning.assess;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Reach;
import stillturning.model.Terminal;
import stillturning.model.goal.ComplexityCount;
import stillturning.model.goal.ComplexityWeights;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;

/**
 * How much there is to build, to know and to do, count by count.
 *
 * @param counts every count, in the order of the enumeration
 */
public record Complexity(Map<ComplexityCount, Integer> counts) {

    private static final int POSITIONS_OF_A_CHANNEL = Lever.COMMANDED.size();

    public Complexity {
        Map<ComplexityCount, Integer> ordered = new EnumMap<>(ComplexityCount.class);
        ordered.putAll(counts);
        counts = Collections.unmodifiableMap(ordered);
    }

    static Complexity of(Candidate candidate, int loops, PilotBurden pilot) {
        int channels = (int) channelsInUse(candidate);
        List<Part> built = candidate.parts().stream().filter(Complexity::isBuilt).toList();
        int protecting = (int) built.stream().filter(Complexity::protects).count();
        int boxes = (int) built.stream().filter(p -> channels(p) == 1).count();
        Map<ComplexityCount, Integer> counts = new EnumMap<>(ComplexityCount.class);
        // a box around a single channel is the protector itself
        counts.put(ComplexityCount.PARTS, built.size() - protecting - boxes);
        counts.put(ComplexityCount.PROTECTORS, protecting + channels);
        counts.put(ComplexityCount.WIRE_ENDS, 2 * (int) candidate.wires().count());
        counts.put(ComplexityCount.KINDS, (int) built.stream().map(Part::kind).distinct().count());
        counts.put(
                ComplexityCount.LEVER_POSITIONS,
                positions(candidate) + POSITIONS_OF_A_CHANNEL * channels);
        counts.put(ComplexityCount.UNHURRIED_ACTS, pilot.withTimeInHand().size());
        counts.put(ComplexityCount.URGENT_ACTS, pilot.byHeart().size());
        counts.put(ComplexityCount.SOFTWARE_FUNCTIONS, software(candidate, channels));
        counts.put(ComplexityCount.LOOPS, loops);
        return new Complexity(counts);
    }

    /** Sum of the counts, each by its weight. */
    public double index(ComplexityWeights weights) {
        return counts.entrySet().stream()
                .mapToDouble(e -> e.getValue() * weights.of(e.getKey()))
                .sum();
    }

    /** One of the counts. */
    public int count(ComplexityCount of) {
        return counts.getOrDefault(of, 0);
    }

    private static boolean isBuilt(Part part) {
        return part.role() != Part.Role.WIRE && part.role() != Part.Role.LOAD;
    }

    /** Channels are counted by use. */
    private static boolean protects(Part part) {
        return channels(part) == 0
                && part.elements().stream().anyMatch(Protector.class::isInstance);
    }

    private static long channels(Part part) {
        return part.elements().stream().filter(Channel.class::isInstance).count();
    }

    /** Electronic switches in use, what runs them, and procedures that run by themselves. */
    private static int software(Candidate candidate, int channels) {
        int logics = candidate.parts().stream().mapToInt(Part::logics).sum();
        long automatic =
                candidate.cockpit().procedures().stream()
                        .filter(p -> p.execution().automatic().isPresent())
                        .count();
        return channels + logics + (int) automatic;
    }

    /** Of what a hand can move, breakers that can be pulled too; channels are counted by use. */
    private static int positions(Candidate candidate) {
        return candidate.parts().stream()
                .filter(part -> channels(part) == 0)
                .flatMap(part -> part.levers().stream())
                .filter(
                        lever ->
                                candidate.cockpit().reachOf(lever.name()).orElse(Reach.SEAT)
                                        != Reach.NONE)
                .mapToInt(lever -> lever.positions().size())
                .sum();
    }

    private static long channelsInUse(Candidate candidate) {
        return candidate.joins().stream()
                .flatMap(join -> Stream.of(join.one(), join.other()))
                .distinct()
                .filter(end -> isChannel(candidate, end))
                .count();
    }

    private static boolean isChannel(Candidate candidate, Terminal end) {
        return candidate.part(end.part()).stream()
                .flatMap(part -> part.elements().stream())
                .anyMatch(e -> isChannelTo(e, end.name()));
    }

    private static boolean isChannelTo(Element element, String terminal) {
        return element instanceof Channel && element.to().equals(terminal);
    }
}

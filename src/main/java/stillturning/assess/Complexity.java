package stillturning.assess;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Join;
import stillturning.model.Procedure;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Element;
import stillturning.parts.element.Protector;

/**
 * How much there is to build, to know and to do; the index is the sum of the counts.
 *
 * @param parts parts, wires and loads apart
 * @param terminations wire ends
 * @param kinds different kinds of parts
 * @param positions positions that levers can stand in
 * @param pilotActions moves and sheddings in the procedures
 * @param urgentActions those of them that are due within {@link #URGENT_SECONDS}, counted again
 * @param protectors fuses, breakers and electronic trips in use
 * @param softwareFunctions electronic switches in use and the logics that run them
 * @param loops independent loops of the graph
 */
public record Complexity(
        int parts,
        int terminations,
        int kinds,
        int positions,
        int pilotActions,
        int urgentActions,
        int protectors,
        int softwareFunctions,
        int loops) {

    /** A move due sooner than this is done by heart (s). Common practice, no published source. */
    public static final double URGENT_SECONDS = 30;

    static Complexity of(Candidate candidate, int loops) {
        int channels =
                (int) candidate.joins().stream().filter(j -> isChannel(candidate, j)).count();
        int logics = candidate.parts().stream().mapToInt(Part::logics).sum();
        return new Complexity(
                (int) candidate.parts().stream().filter(Complexity::counts).count(),
                2 * (int) candidate.wires().count(),
                (int)
                        candidate.parts().stream()
                                .filter(Complexity::counts)
                                .map(Part::kind)
                                .distinct()
                                .count(),
                positions(candidate) + 2 * channels,
                candidate.cockpit().procedures().stream().mapToInt(Complexity::actions).sum(),
                candidate.cockpit().procedures().stream()
                        .filter(p -> p.responseSeconds() <= URGENT_SECONDS)
                        .mapToInt(Complexity::actions)
                        .sum(),
                (int) candidate.parts().stream().filter(Complexity::protects).count() + channels,
                channels + logics,
                loops);
    }

    /** Sum of the counts. */
    public int index() {
        return counts().values().stream().mapToInt(Integer::intValue).sum();
    }

    /** Every count by its name in words, in a fixed order. */
    public Map<String, Integer> counts() {
        Map<String, Integer> counts = new LinkedHashMap<>();
        counts.put("parts", parts);
        counts.put("wire ends", terminations);
        counts.put("kinds of parts", kinds);
        counts.put("lever positions", positions);
        counts.put("pilot actions", pilotActions);
        counts.put("of these urgent", urgentActions);
        counts.put("protectors", protectors);
        counts.put("functions in software", softwareFunctions);
        counts.put("independent loops", loops);
        return counts;
    }

    private static boolean counts(Part part) {
        return part.role() != Part.Role.WIRE && part.role() != Part.Role.LOAD;
    }

    private static boolean protects(Part part) {
        return part.elements().stream().anyMatch(Protector.class::isInstance);
    }

    private static int positions(Candidate candidate) {
        return candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(Lever::stated)
                .mapToInt(lever -> lever.positions().size())
                .sum();
    }

    private static int actions(Procedure procedure) {
        return procedure.moves().size() + procedure.sheds().size();
    }

    private static boolean isChannel(Candidate candidate, Join join) {
        return Stream.of(join.one(), join.other())
                .anyMatch(
                        end ->
                                candidate.part(end.part()).stream()
                                        .flatMap(part -> part.elements().stream())
                                        .anyMatch(e -> isChannelTo(e, end.name())));
    }

    private static boolean isChannelTo(Element element, String terminal) {
        return element instanceof Channel && element.to().equals(terminal);
    }
}

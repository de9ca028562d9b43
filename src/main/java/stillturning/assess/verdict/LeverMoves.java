package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import stillturning.model.Candidate;
import stillturning.parts.Lever;

/** Single moves that a hand can make in a candidate that is flown as it is written. */
final class LeverMoves {

    private LeverMoves() {}

    /** Every lever of these in every position in which it rests and does not stand. */
    static List<Map<String, String>> of(Candidate candidate, Predicate<Lever> levers) {
        List<Map<String, String>> moves = new ArrayList<>();
        candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(levers)
                .forEach(
                        lever ->
                                lever.restingPositions().stream()
                                        .filter(
                                                position ->
                                                        !position.equals(stands(candidate, lever)))
                                        .forEach(to -> moves.add(Map.of(lever.name(), to))));
        return moves;
    }

    private static String stands(Candidate candidate, Lever lever) {
        return candidate.cockpit().flight().getOrDefault(lever.name(), lever.usual());
    }
}

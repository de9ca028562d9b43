package stillturning.model.failure;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.Cue;

/** All single failures of a candidate. */
public final class FailureCatalogue {

    /** Name of the drill that takes all power off the airframe. */
    public static final String MASTER_OFF = "master off in flight";

    /** Name of the case in which no source charges any more. */
    public static final String CHARGING_LOST = "charging lost";

    /** Key of the failure by which a charging source gives nothing any more. */
    private static final String NO_OUTPUT = "no-output";

    private FailureCatalogue() {}

    /** All charging sources of a candidate failing together. */
    public static Failure chargingLost(Candidate candidate) {
        List<Hit> hits =
                candidate
                        .generators()
                        .flatMap(
                                source ->
                                        source.failureModes().stream()
                                                .filter(mode -> mode.key().equals(NO_OUTPUT))
                                                .map(mode -> new Hit(source.id(), mode)))
                        .toList();
        return new Failure(CHARGING_LOST, hits, Map.of());
    }

    /** Every failure mode of every part, in the candidate's order. */
    public static List<Failure> singlesOf(Candidate candidate) {
        return candidate.parts().stream()
                .flatMap(
                        part ->
                                part.failureModes().stream()
                                        .map(mode -> Failure.of(new Hit(part.id(), mode))))
                .toList();
    }

    /**
     * What one omission leaves where it should not be: one switch, or all that one line of a
     * checklist moves.
     *
     * @param lever the switch, or those of the line in its order
     * @param normally where it stands in normal flight
     * @param position where it stands
     * @param positions the same position by lever
     * @param line the line that moves several; empty for one switch
     */
    public record Misplaced(
            String lever,
            String normally,
            String position,
            Map<String, String> positions,
            Optional<String> line) {

        private static final String AND = ", ";

        public Misplaced {
            positions = Collections.unmodifiableMap(new LinkedHashMap<>(positions));
        }

        /** One switch. */
        public Misplaced(String lever, String normally, String position) {
            this(lever, normally, position, Map.of(lever, position), Optional.empty());
        }

        private static Misplaced together(
                String line, Map<String, String> normally, Map<String, String> positions) {
            return new Misplaced(
                    String.join(AND, positions.keySet()),
                    positions.keySet().stream().map(normally::get).collect(Collectors.joining(AND)),
                    String.join(AND, positions.values()),
                    positions,
                    Optional.of(line));
        }

        /** What stands where, in words. */
        public String words() {
            return line.map(
                            name ->
                                    "all left as in "
                                            + name
                                            + ": "
                                            + positions.entrySet().stream()
                                                    .map(e -> e.getKey() + " " + e.getValue())
                                                    .collect(Collectors.joining(AND)))
                    .orElseGet(() -> lever + " left " + position);
        }

        /** In words, unique in the candidate. */
        public String name() {
            return line.map(name -> "all left as in " + name).orElseGet(this::words)
                    + " before flight";
        }

        /** It stands there from the first instant, nobody knows, and nothing else is wrong. */
        public Failure failure() {
            return Failure.left(name(), positions);
        }
    }

    /** Every omission that leaves switches wrong: of one switch, then of a whole line. */
    public static List<Misplaced> omissionsOf(Candidate candidate) {
        return Stream.concat(leftSwitchesOf(candidate).stream(), leftTogetherOf(candidate).stream())
                .toList();
    }

    /**
     * What one line of a checklist moves together, left so: the drill that takes all power off,
     * which is how an aircraft is parked; the positions for starting the engine; what a procedure
     * moves. Only where that is several switches which stay there, and each set once.
     */
    public static List<Misplaced> leftTogetherOf(Candidate candidate) {
        Map<String, Map<String, String>> lines = new LinkedHashMap<>();
        lines.put("master-off", candidate.cockpit().masterOff());
        lines.put("starting", candidate.cockpit().starting());
        candidate.cockpit().procedures().stream()
                .filter(procedure -> procedure.execution().automatic().isEmpty())
                .forEach(procedure -> lines.putIfAbsent(procedure.name(), procedure.moves()));
        Map<Map<String, String>, Misplaced> left = new LinkedHashMap<>();
        lines.forEach(
                (line, moves) -> {
                    Map<String, String> normally = standing(candidate);
                    Map<String, String> wrong = new LinkedHashMap<>(moves);
                    wrong.entrySet()
                            .removeIf(
                                    move ->
                                            move.getValue().equals(normally.get(move.getKey()))
                                                    || !staysThere(candidate, move));
                    if (wrong.size() > 1) {
                        left.putIfAbsent(wrong, Misplaced.together(line, normally, wrong));
                    }
                });
        return List.copyOf(left.values());
    }

    private static Map<String, String> standing(Candidate candidate) {
        Map<String, String> standing = new HashMap<>();
        candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .forEach(lever -> standing.put(lever.name(), lever.usual()));
        standing.putAll(candidate.cockpit().flight());
        return standing;
    }

    private static boolean staysThere(Candidate candidate, Map.Entry<String, String> move) {
        return candidate
                .lever(move.getKey())
                .filter(lever -> lever.restingPositions().contains(move.getValue()))
                .isPresent();
    }

    /**
     * Every switch of normal flight left in every other position in which it stays, one at a time.
     */
    public static List<Misplaced> leftSwitchesOf(Candidate candidate) {
        List<Misplaced> left = new ArrayList<>();
        candidate
                .cockpit()
                .flight()
                .forEach(
                        (lever, normally) ->
                                candidate.lever(lever).stream()
                                        .flatMap(made -> made.restingPositions().stream())
                                        .filter(position -> !position.equals(normally))
                                        .map(position -> new Misplaced(lever, normally, position))
                                        .forEach(left::add));
        return List.copyOf(left);
    }

    /**
     * Every lamp dead, one at a time, in the order of the cues. By itself it changes nothing; what
     * it should have shown comes unseen.
     */
    public static List<Failure> deadLampsOf(Candidate candidate) {
        return candidate.cockpit().cues().stream()
                .filter(Cue::isOnALamp)
                .map(cue -> Failure.dark(cue.name()))
                .toList();
    }

    /** Things that happen without anything breaking; none where the candidate defines none. */
    public static List<Failure> operatingCasesOf(Candidate candidate) {
        return candidate.cockpit().masterOff().isEmpty()
                ? List.of()
                : List.of(Failure.drill(MASTER_OFF, candidate.cockpit().masterOff()));
    }
}

package stillturning.model.failure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
     * A switch that stands where it should not.
     *
     * @param lever the switch
     * @param normally where it stands in normal flight
     * @param position where it stands
     */
    public record Misplaced(String lever, String normally, String position) {
        /** In words. */
        public String name() {
            return lever + " left " + position + " before flight";
        }

        /** It stands there from the first instant, and nothing else is wrong. */
        public Failure failure() {
            return Failure.levers(name(), Map.of(lever, position));
        }
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

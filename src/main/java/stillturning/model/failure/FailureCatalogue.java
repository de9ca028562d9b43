package stillturning.model.failure;

import stillturning.parts.Lever;
import java.util.ArrayList;
import java.util.List;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;

/** All single failures of a candidate. */
public final class FailureCatalogue {

    /** Name of the drill that takes all power off the airframe. */
    public static final String MASTER_OFF = "master off in flight";

    private FailureCatalogue() {}

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
    }

    /** Every switch of normal flight left in every other position, one at a time. */
    public static List<Misplaced> leftSwitchesOf(Candidate candidate) {
        List<Misplaced> left = new ArrayList<>();
        candidate
                .cockpit()
                .flight()
                .forEach(
                        (lever, normally) ->
                                positions(candidate, lever).stream()
                                        .filter(position -> !position.equals(normally))
                                        .map(position -> new Misplaced(lever, normally, position))
                                        .forEach(left::add));
        return List.copyOf(left);
    }

    private static List<String> positions(Candidate candidate, String lever) {
        return candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(l -> l.name().equals(lever))
                .findFirst()
                .map(Lever::positions)
                .orElse(List.of());
    }

    /** Things that happen without anything breaking; none where the candidate defines none. */
    public static List<Failure> operatingCasesOf(Candidate candidate) {
        return candidate.cockpit().masterOff().isEmpty()
                ? List.of()
                : List.of(Failure.levers(MASTER_OFF, candidate.cockpit().masterOff()));
    }
}

package stillturning.reliability.runup;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Lever;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;

/** Moves levers on the ground, with the engine running, and looks. */
final class GroundTrials {

    /**
     * How long each position is held (s): longer than lamps, contactors and computers take to
     * answer. What is seen must be the same for each of them, so that a lamp which a charging
     * battery puts out sooner or later tells nothing. A guess.
     */
    private static final List<Double> HOLDS = List.of(15.0, 30.0, 90.0);

    /** What the card says (s). */
    private static final double HELD_SECONDS = 30;

    private final Candidate candidate;
    private final Ground ground;
    private final MoveTrials trials;

    GroundTrials(Study study, Candidate candidate) throws UntoldStory {
        this.candidate = candidate;
        this.ground = new Ground(study, candidate);
        this.trials = new MoveTrials(candidate, ground, HELD_SECONDS);
    }

    /** How a card is gone through. */
    MovePace pace() {
        return new MovePace(ground.moveSeconds(), HELD_SECONDS);
    }

    /**
     * Every move of one or two levers, and of those that a procedure or the master-off drill names
     * together; two that do harm in either order also with a third.
     */
    Tried ofLevers() {
        List<Map<String, String>> single =
                FailureCatalogue.leftSwitchesOf(candidate).stream()
                        .map(left -> Map.of(left.lever(), left.position()))
                        .toList();
        Set<Map<String, String>> all = new LinkedHashSet<>(single);
        for (Map<String, String> one : single) {
            for (Map<String, String> other : single) {
                if (lever(one).compareTo(lever(other)) < 0) {
                    all.add(both(one, other));
                }
            }
        }
        for (Procedure procedure : candidate.cockpit().procedures()) {
            all.add(procedure.moves());
        }
        all.add(candidate.cockpit().masterOff());
        Tried tried = trials.of(all);
        Set<Map<String, String>> more = new LinkedHashSet<>();
        for (Map<String, String> pair : tried.harmful()) {
            for (Map<String, String> third : single) {
                if (pair.size() == 2 && !pair.containsKey(lever(third))) {
                    more.add(both(pair, third));
                }
            }
        }
        more.removeIf(moves -> all.stream().anyMatch(moves::equals));
        return tried.and(trials.of(more));
    }

    private static String lever(Map<String, String> one) {
        return one.keySet().iterator().next();
    }

    /** Every breaker pulled, one at a time. */
    Tried ofBreakers() {
        return trials.of(new LinkedHashSet<>(pulls()));
    }

    /** The same for a breaker together with another one or with a lever; refusals are not told. */
    Tried ofBreakersWithMore() {
        Set<Map<String, String>> all = new LinkedHashSet<>();
        List<Map<String, String>> pulls = pulls();
        for (Map<String, String> one : pulls) {
            FailureCatalogue.leftSwitchesOf(candidate)
                    .forEach(left -> all.add(both(one, Map.of(left.lever(), left.position()))));
        }
        for (int i = 0; i < pulls.size(); i++) {
            for (int j = i + 1; j < pulls.size(); j++) {
                all.add(both(pulls.get(i), pulls.get(j)));
            }
        }
        return new Tried(trials.of(all).moves(), List.of());
    }

    private List<Map<String, String>> pulls() {
        return candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .filter(lever -> lever.positions().equals(Lever.PULLED))
                .map(lever -> Map.of(lever.name(), Setting.PULLED))
                .toList();
    }

    private static Map<String, String> both(Map<String, String> one, Map<String, String> other) {
        Map<String, String> both = new LinkedHashMap<>(one);
        both.putAll(other);
        return both;
    }

    /**
     * What is seen of a failure instead of what is expected of a move, if anything. A breaker that
     * a hand can pull may still not open by itself, so pulling it says nothing of that.
     */
    Optional<Check.Revealed> reveals(int event, Failure failure, SeenMoves move) {
        if (failure.hits().stream().anyMatch(hit -> pulls(move.moves(), hit.part()))) {
            return Optional.empty();
        }
        List<SeenDifference> seen = differences(failure, move.steps());
        return seen.isEmpty() ? Optional.empty() : Optional.of(new Check.Revealed(event, seen));
    }

    /** Whether moves that are not offered would show a failure. */
    boolean wouldReveal(Failure failure, Map<String, String> moves) {
        return failure.hits().stream().noneMatch(hit -> pulls(moves, hit.part()))
                && !differences(failure, List.of(moves, trials.back(moves))).isEmpty();
    }

    /**
     * What is seen of a failure step by step, however long each is held, and not already before
     * anything is moved. What cannot be computed reveals nothing, so it stays among the hidden.
     */
    List<SeenDifference> differences(Failure failure, List<Map<String, String>> steps) {
        try {
            return seen(failure, steps);
        } catch (UntoldStory e) {
            return List.of();
        }
    }

    private List<SeenDifference> seen(Failure failure, List<Map<String, String>> steps)
            throws UntoldStory {
        Set<SeenDifference> always = new TreeSet<>();
        for (double hold : HOLDS) {
            Set<SeenDifference> now =
                    SeenDifference.between(
                            ground.usual(steps, hold).views(),
                            ground.play(failure, steps, hold).views());
            if (hold == HOLDS.get(0)) {
                always.addAll(now);
            }
            always.retainAll(now);
            if (always.isEmpty()) {
                return List.of();
            }
        }
        return always.stream()
                .filter(d -> !always.contains(new SeenDifference(0, d.what(), d.name())))
                .toList();
    }

    private static boolean pulls(Map<String, String> moves, String part) {
        return Setting.PULLED.equals(moves.get(part));
    }
}

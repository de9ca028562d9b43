package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.HashMap;
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
import stillturning.model.failure.FailureCatalogue.Misplaced;
import stillturning.parts.Lever;
import stillturning.story.Moment;
import stillturning.story.PilotView;
import stillturning.story.PilotView.Engine;
import stillturning.story.Setting;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Moves levers on the ground, with the engine running, and looks. */
final class GroundTrials {

    /**
     * How long each position is held (s): longer than lamps, contactors and computers take to
     * answer. What is seen must be the same for each of them, so that a lamp which a charging
     * battery puts out sooner or later tells nothing. A guess.
     */
    private static final List<Double> HOLDS = List.of(15.0, 30.0, 90.0);

    /** What the card says (s). */
    static final double HELD_SECONDS = 30;

    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    private final Candidate candidate;
    private final Timeline ground;
    private final Map<Asked, List<PilotView>> usual = new HashMap<>();

    private record Asked(List<Map<String, String>> steps, double seconds) {}

    /** A move with what there is to see of it, nothing wrong. */
    record Move(
            Map<String, String> moves, Map<String, String> back, PilotView before, PilotView then) {
        List<Map<String, String>> steps() {
            return List.of(moves, back);
        }
    }

    GroundTrials(Study study, Candidate candidate) throws UntoldStory {
        this.candidate = candidate;
        this.ground = new Timeline(study, candidate, Moment.heldIn(study.goals().runUp().name()));
    }

    /**
     * Every move of one or two levers, and of those that a procedure or the master-off drill names
     * together, after which the engine runs on and all is as before.
     */
    List<Move> ofLevers() throws UntoldStory {
        Set<Map<String, String>> all = new LinkedHashSet<>();
        List<Misplaced> single = FailureCatalogue.leftSwitchesOf(candidate);
        single.forEach(one -> all.add(Map.of(one.lever(), one.position())));
        for (Misplaced one : single) {
            for (Misplaced other : single) {
                if (one.lever().compareTo(other.lever()) < 0) {
                    all.add(
                            both(
                                    Map.of(one.lever(), one.position()),
                                    Map.of(other.lever(), other.position())));
                }
            }
        }
        for (Procedure procedure : candidate.cockpit().procedures()) {
            all.add(procedure.moves());
        }
        all.add(candidate.cockpit().masterOff());
        return harmless(all);
    }

    /** Every breaker pulled, one at a time, after which the engine runs on and all is as before. */
    List<Move> ofBreakers() throws UntoldStory {
        return harmless(new LinkedHashSet<>(pulls()));
    }

    /** The same for a breaker together with another one or with a lever. */
    List<Move> ofBreakersWithMore() throws UntoldStory {
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
        return harmless(all);
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

    private List<Move> harmless(Set<Map<String, String>> all) throws UntoldStory {
        List<Move> harmless = new ArrayList<>();
        for (Map<String, String> moves : all) {
            Map<String, String> back = back(moves);
            if (!moves.isEmpty() && !moves.equals(back)) {
                List<PilotView> sights = usual(List.of(moves, back), HELD_SECONDS);
                PilotView before = sights.get(0);
                boolean runs = sights.stream().allMatch(s -> s.engine() != Engine.STOPS);
                if (runs && sights.get(2).equals(before)) {
                    harmless.add(new Move(moves, back, before, sights.get(1)));
                }
            }
        }
        return harmless;
    }

    private Map<String, String> back(Map<String, String> moves) {
        Map<String, String> back = new LinkedHashMap<>();
        moves.keySet()
                .forEach(
                        lever ->
                                back.put(
                                        lever,
                                        candidate
                                                .cockpit()
                                                .flight()
                                                .getOrDefault(lever, atRest(lever))));
        return back;
    }

    private String atRest(String lever) {
        return candidate.lever(lever).map(Lever::usual).orElse("");
    }

    /**
     * What is seen of a failure instead of what is expected of a move, if anything. A breaker that
     * a hand can pull may still not open by itself, so pulling it says nothing of that.
     */
    Optional<Check.Revealed> reveals(int event, Failure failure, Move move) throws UntoldStory {
        if (failure.hits().stream().anyMatch(hit -> pulls(move, hit.part()))) {
            return Optional.empty();
        }
        List<SeenDifference> seen = differences(failure, move.steps());
        return seen.isEmpty() ? Optional.empty() : Optional.of(new Check.Revealed(event, seen));
    }

    /**
     * What is seen of a failure step by step, however long each is held, and not already before
     * anything is moved.
     */
    List<SeenDifference> differences(Failure failure, List<Map<String, String>> steps)
            throws UntoldStory {
        Set<SeenDifference> always = new TreeSet<>();
        for (double hold : HOLDS) {
            Set<SeenDifference> now =
                    SeenDifference.between(usual(steps, hold), play(failure, steps, hold));
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

    /** The same with nothing wrong: asked again for every failure, so kept. */
    private List<PilotView> usual(List<Map<String, String>> steps, double seconds)
            throws UntoldStory {
        Asked asked = new Asked(steps, seconds);
        List<PilotView> known = usual.get(asked);
        if (known == null) {
            known = play(NOTHING, steps, seconds);
            usual.put(asked, known);
        }
        return known;
    }

    private static boolean pulls(Move move, String part) {
        return Setting.PULLED.equals(move.moves().get(part));
    }

    /** What there is to see before anything is moved, then step by step. */
    private List<PilotView> play(Failure failure, List<Map<String, String>> steps, double seconds)
            throws UntoldStory {
        List<Map<String, String>> all = new ArrayList<>();
        all.add(Map.of());
        all.addAll(steps);
        return ground.rehearse(failure, all, seconds);
    }
}

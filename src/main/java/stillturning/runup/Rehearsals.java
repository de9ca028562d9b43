package stillturning.runup;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.failure.Failure;
import stillturning.failure.FailureCatalogue;
import stillturning.failure.FailureCatalogue.Misplaced;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.parts.Breaker;
import stillturning.story.Moment;
import stillturning.story.Setting;
import stillturning.story.Sight;
import stillturning.story.Sight.Engine;
import stillturning.story.UntoldStory;
import stillturning.timeline.Timeline;

/** Moves levers on the ground, with the engine running, and looks. */
final class Rehearsals {

    /** Longer than lamps, contactors and computers take to answer (s). A guess. */
    static final double HELD_SECONDS = 30;

    private static final Failure NOTHING = new Failure("nothing", List.of(), Map.of());

    private final Candidate candidate;
    private final Timeline ground;

    /** A move with what there is to see of it, nothing wrong. */
    record Move(Map<String, String> moves, Map<String, String> back, List<Sight> expected) {}

    Rehearsals(Study study, Candidate candidate) throws UntoldStory {
        this.candidate = candidate;
        this.ground =
                new Timeline(study, candidate, Moment.heldIn(study.goals().runUp().name()));
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
                    all.add(both(one, other));
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
        Set<Map<String, String>> all = new LinkedHashSet<>();
        candidate
                .all(Breaker.class)
                .forEach(breaker -> all.add(Map.of(breaker.id(), Setting.PULLED)));
        return harmless(all);
    }

    private static Map<String, String> both(Misplaced one, Misplaced other) {
        Map<String, String> both = new LinkedHashMap<>();
        both.put(one.lever(), one.position());
        both.put(other.lever(), other.position());
        return both;
    }

    private List<Move> harmless(Set<Map<String, String>> all) throws UntoldStory {
        List<Move> harmless = new ArrayList<>();
        for (Map<String, String> moves : all) {
            Map<String, String> back = back(moves);
            if (!moves.isEmpty() && !moves.equals(back)) {
                List<Sight> sights = play(NOTHING, List.of(moves, back));
                Sight before = sights.get(0);
                boolean runs = sights.stream().allMatch(s -> s.engine() != Engine.STOPS);
                if (runs && sights.get(2).cues().equals(before.cues())) {
                    harmless.add(new Move(moves, back, sights));
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
                                        Optional.ofNullable(candidate.cockpit().flight().get(lever))
                                                .orElse(atRest(lever))));
        return back;
    }

    private String atRest(String lever) {
        return candidate.part(lever).filter(Breaker.class::isInstance).isPresent() ? "in" : "on";
    }

    /**
     * What is seen of a failure instead of what is expected of a move, if anything. A breaker that a
     * hand can pull may still not open by itself, so pulling it says nothing of that.
     */
    Optional<Check.Revealed> reveals(int event, Failure failure, Move move) throws UntoldStory {
        if (failure.hits().stream().anyMatch(hit -> pulls(move, hit.part()))) {
            return Optional.empty();
        }
        List<Sight> sights = play(failure, List.of(move.moves(), move.back()));
        for (int step = 1; step < sights.size(); step++) {
            if (!sights.get(step).equals(move.expected().get(step))) {
                return Optional.of(new Check.Revealed(event, sights.get(step), step > 1));
            }
        }
        return Optional.empty();
    }

    private static boolean pulls(Move move, String part) {
        return Setting.PULLED.equals(move.moves().get(part));
    }

    /** What there is to see before anything is moved, then step by step. */
    List<Sight> play(Failure failure, List<Map<String, String>> steps) throws UntoldStory {
        List<Map<String, String>> all = new ArrayList<>();
        all.add(Map.of());
        all.addAll(steps);
        return ground.rehearse(failure, all, HELD_SECONDS);
    }

    /** The same with nothing wrong. */
    List<Sight> play(List<Map<String, String>> steps) throws UntoldStory {
        return play(NOTHING, steps);
    }
}

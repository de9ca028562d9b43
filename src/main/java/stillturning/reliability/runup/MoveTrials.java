package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Reach;
import stillturning.parts.Lever;
import stillturning.reliability.runup.Refusal.NoOrder;
import stillturning.reliability.runup.Refusal.OutOfReach;
import stillturning.story.Harm;
import stillturning.story.MoveOrders;
import stillturning.story.PilotView;
import stillturning.story.PilotView.Engine;
import stillturning.story.Rehearsal;
import stillturning.story.UntoldStory;

/**
 * Plays sets of moves move by move, at a hand's pace and once more slowly, and finds orders in
 * which they do no harm, there and back.
 */
final class MoveTrials {

    /** The moves are the first step; setting them back is the second. */
    private static final int BACK = 2;

    private final Candidate candidate;
    private final Ground ground;
    private final double heldSeconds;

    MoveTrials(Candidate candidate, Ground ground, double heldSeconds) {
        this.candidate = candidate;
        this.ground = ground;
        this.heldSeconds = heldSeconds;
    }

    /**
     * What can be done of these, and what not. Those that change nothing are neither, and of what
     * cannot be computed nobody knows that it does no harm.
     */
    Tried of(Set<Map<String, String>> all) {
        List<Move> moves = new ArrayList<>();
        List<Refusal> refused = new ArrayList<>();
        for (Map<String, String> set : all) {
            if (!set.isEmpty() && !set.equals(back(set))) {
                try {
                    sort(set, moves, refused);
                } catch (UntoldStory e) {
                    // not offered, as what does harm in every order is not
                }
            }
        }
        return new Tried(List.copyOf(moves), List.copyOf(refused));
    }

    private void sort(Map<String, String> set, List<Move> moves, List<Refusal> refused)
            throws UntoldStory {
        List<String> far = set.keySet().stream().filter(l -> !inReach(l)).toList();
        if (!far.isEmpty()) {
            refuse(set, new OutOfReach(far)).ifPresent(refused::add);
            return;
        }
        Optional<Move> move = ordered(set);
        move.ifPresent(moves::add);
        if (move.isEmpty()) {
            refuseForHarm(set).ifPresent(refused::add);
        }
    }

    private boolean inReach(String lever) {
        return candidate.cockpit().reachOf(lever).filter(Reach::onGround).isPresent();
    }

    private Optional<Refusal> refuseForHarm(Map<String, String> set) throws UntoldStory {
        Optional<Harm> harm = harm(List.of(set, back(set)));
        return harm.isPresent() ? refuse(set, new NoOrder(harm.get())) : Optional.empty();
    }

    /** Told only where the levers could stand so, if a hand could put them there. */
    private Optional<Refusal> refuse(Map<String, String> set, Refusal.Reason why)
            throws UntoldStory {
        List<PilotView> views = ground.inOneStroke(List.of(set, back(set)), heldSeconds).views();
        return asBefore(views) ? Optional.of(new Refusal(set, why, List.of())) : Optional.empty();
    }

    private static boolean asBefore(List<PilotView> views) {
        return views.stream().allMatch(view -> view.engine() != Engine.STOPS)
                && views.get(BACK).equals(views.get(0));
    }

    private Optional<Move> ordered(Map<String, String> set) throws UntoldStory {
        Optional<Map<String, String>> there =
                MoveOrders.first(set, order -> harmAfter(List.of(order)));
        if (there.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> moves = there.get();
        Optional<Map<String, String>> back =
                MoveOrders.first(back(reversed(moves)), order -> harmAfter(List.of(moves, order)));
        return back.isPresent() ? move(moves, back.get()) : Optional.empty();
    }

    private Optional<Move> move(Map<String, String> moves, Map<String, String> back)
            throws UntoldStory {
        List<PilotView> views = ground.usual(List.of(moves, back), heldSeconds).views();
        return asBefore(views)
                ? Optional.of(new Move(moves, back, views.get(0), views.get(1)))
                : Optional.empty();
    }

    /** How many moves of the last step had been made when harm came. */
    private Optional<Integer> harmAfter(List<Map<String, String>> steps) throws UntoldStory {
        return harm(steps).filter(harm -> harm.step() == steps.size()).map(Harm::moves);
    }

    private Optional<Harm> harm(List<Map<String, String>> steps) throws UntoldStory {
        Rehearsal atPace = ground.usual(steps, heldSeconds);
        return atPace.harm().isPresent() ? atPace.harm() : ground.slowly(steps, heldSeconds).harm();
    }

    private static Map<String, String> reversed(Map<String, String> moves) {
        List<String> levers = new ArrayList<>(moves.keySet());
        Collections.reverse(levers);
        Map<String, String> reversed = new LinkedHashMap<>();
        levers.forEach(lever -> reversed.put(lever, moves.get(lever)));
        return reversed;
    }

    /** The same levers as they stand in flight. */
    Map<String, String> back(Map<String, String> moves) {
        Map<String, String> back = new LinkedHashMap<>();
        Map<String, String> flight = candidate.cockpit().flight();
        moves.keySet().forEach(lever -> back.put(lever, flight.getOrDefault(lever, atRest(lever))));
        return back;
    }

    private String atRest(String lever) {
        return candidate.lever(lever).map(Lever::usual).orElse("");
    }
}

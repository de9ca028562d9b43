package stillturning.reliability.runup;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import stillturning.model.Candidate;
import stillturning.model.Reach;
import stillturning.parts.Lever;
import stillturning.reliability.runup.RefusedCheck.Lingers;
import stillturning.reliability.runup.RefusedCheck.NoOrder;
import stillturning.reliability.runup.RefusedCheck.OutOfReach;
import stillturning.story.AdverseEffect;
import stillturning.story.MoveOrders;
import stillturning.story.PilotView;
import stillturning.story.PilotView.EngineSound;
import stillturning.story.Rehearsal;
import stillturning.story.UntoldStory;

/**
 * Plays sets of moves move by move, at a hand's pace and once more slowly, and finds orders in
 * which they do no harm, there and back.
 */
final class MoveTrials {

    /** The moves are the first step; setting them back is the second. */
    private static final int BACK = 2;

    /**
     * How many holds one waits at most after setting back for lamps to go out: an alternator that
     * has been off fills its battery before the voltage is what it was. A guess.
     */
    private static final int LONGEST_WAIT = 20;

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
        List<SeenMoves> moves = new ArrayList<>();
        List<RefusedCheck> refused = new ArrayList<>();
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

    private void sort(Map<String, String> set, List<SeenMoves> moves, List<RefusedCheck> refused)
            throws UntoldStory {
        List<String> far = set.keySet().stream().filter(l -> !inReach(l)).toList();
        if (far.isEmpty()) {
            play(set, moves, refused);
        } else if (couldStandSo(set)) {
            refused.add(new RefusedCheck(set, new OutOfReach(far), List.of()));
        }
    }

    private boolean inReach(String lever) {
        return candidate.cockpit().reachOf(lever).filter(Reach::onGround).isPresent();
    }

    private void play(Map<String, String> set, List<SeenMoves> moves, List<RefusedCheck> refused)
            throws UntoldStory {
        Optional<CheckMoves> levers = ordered(set);
        if (levers.isPresent()) {
            settle(levers.get(), moves, refused);
        } else {
            Optional<AdverseEffect> harm = harm(List.of(set, back(set)));
            if (harm.isPresent() && couldStandSo(set)) {
                refused.add(new RefusedCheck(set, new NoOrder(harm.get()), List.of()));
            }
        }
    }

    /** Whether all would be well if a hand could put the levers there, and back, in one stroke. */
    private boolean couldStandSo(Map<String, String> set) throws UntoldStory {
        return asBefore(ground.inOneStroke(thereAndBack(set, back(set)), heldSeconds).views())
                .isPresent();
    }

    private Optional<CheckMoves> ordered(Map<String, String> set) throws UntoldStory {
        Optional<Map<String, String>> there =
                MoveOrders.first(set, order -> harmAfter(List.of(order)));
        if (there.isEmpty()) {
            return Optional.empty();
        }
        Map<String, String> moves = there.get();
        return MoveOrders.first(back(reversed(moves)), order -> harmAfter(List.of(moves, order)))
                .map(back -> new CheckMoves(moves, back, heldSeconds));
    }

    /** Waits until all is as before. */
    private void settle(CheckMoves levers, List<SeenMoves> moves, List<RefusedCheck> refused)
            throws UntoldStory {
        List<PilotView> views = ground.usual(levers.steps(), heldSeconds).views();
        OptionalInt holds = asBefore(views);
        if (holds.isEmpty()) {
            views = ground.usual(thereAndBack(levers.moves(), levers.back()), heldSeconds).views();
            holds = asBefore(views);
        }
        if (holds.isPresent()) {
            double seconds = holds.getAsInt() * heldSeconds;
            moves.add(
                    new SeenMoves(
                            new CheckMoves(levers.moves(), levers.back(), seconds),
                            views.get(0),
                            views.get(1)));
        } else {
            PilotView last = views.get(views.size() - 1);
            double waited = LONGEST_WAIT * heldSeconds;
            refused.add(
                    new RefusedCheck(levers.moves(), new Lingers(last.cues(), waited), List.of()));
        }
    }

    private static List<Map<String, String>> thereAndBack(
            Map<String, String> moves, Map<String, String> back) {
        List<Map<String, String>> steps = new ArrayList<>(List.of(moves, back));
        steps.addAll(Collections.nCopies(LONGEST_WAIT - 1, Map.of()));
        return steps;
    }

    /** How many holds after setting back all is as before, if it ever is and the engine ran on. */
    private static OptionalInt asBefore(List<PilotView> views) {
        boolean stops = views.stream().anyMatch(view -> view.engine() == EngineSound.STOPS);
        return stops
                ? OptionalInt.empty()
                : IntStream.range(BACK, views.size())
                        .filter(i -> views.get(i).equals(views.get(0)))
                        .map(i -> i - BACK + 1)
                        .findFirst();
    }

    /** How many moves of the last step had been made when harm came. */
    private Optional<Integer> harmAfter(List<Map<String, String>> steps) throws UntoldStory {
        return harm(steps).filter(harm -> harm.step() == steps.size()).map(AdverseEffect::moves);
    }

    private Optional<AdverseEffect> harm(List<Map<String, String>> steps) throws UntoldStory {
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

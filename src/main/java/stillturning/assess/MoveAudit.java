package stillturning.assess;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Candidate;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.AdverseEffect;
import stillturning.story.MoveOrders;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Plays the moves of a candidate's drill, and of its procedures after every failure that calls for
 * them, in every order, and tells where the written one does harm that another does not. What every
 * order does is not the order's fault.
 */
final class MoveAudit {

    /** At the stated pace, and once more slowly. */
    private static final List<Pilot> HANDS = List.of(Pilot.PLANNED, Pilot.LATE);

    private final Study study;
    private final Candidate candidate;

    MoveAudit(Study study, Candidate candidate) {
        this.study = study;
        this.candidate = candidate;
    }

    /** One event by its kind and part, whenever it happens and whatever its numbers. */
    private record Sort(StoryEvent.Kind kind, String part) {
        static Sort of(StoryEvent event) {
            return new Sort(event.kind(), event.part());
        }
    }

    /**
     * Moves as they are written.
     *
     * @param after what had failed
     * @param who who makes them, as stories say it
     */
    private record Written(
            String what, Map<String, String> moves, Optional<String> after, String who) {}

    private interface Play {
        Story in(Map<String, String> order) throws UntoldStory;
    }

    /** The drill, then the pilot's procedures after the failures that call for them. */
    List<HarmfulMoves> all(List<Verdict> verdicts) {
        List<HarmfulMoves> found = new ArrayList<>(drill().stream().toList());
        for (Procedure procedure : candidate.cockpit().procedures()) {
            if (procedure.moves().size() > 1 && procedure.execution().automatic().isEmpty()) {
                procedure(procedure, verdicts).ifPresent(found::add);
            }
        }
        return List.copyOf(found);
    }

    /** The drill that takes all power off, with nothing else wrong, at either pace. */
    Optional<HarmfulMoves> drill() {
        return HANDS.stream().flatMap(hands -> drill(hands).stream()).findFirst();
    }

    private Optional<HarmfulMoves> drill(Pilot hands) {
        Map<String, String> moves = candidate.cockpit().masterOff();
        try {
            Timeline timeline = Timeline.quick(study, candidate);
            Play play =
                    order ->
                            timeline.tell(Failure.drill(FailureCatalogue.MASTER_OFF, order), hands);
            Written written =
                    new Written(
                            FailureCatalogue.MASTER_OFF,
                            moves,
                            Optional.empty(),
                            AdverseEffect.COCKPIT);
            return moves.size() < 2 ? Optional.empty() : audit(written, play.in(moves), play);
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private Optional<HarmfulMoves> procedure(Procedure procedure, List<Verdict> verdicts) {
        return HANDS.stream()
                .flatMap(hands -> procedure(procedure, verdicts, hands).stream())
                .findFirst();
    }

    private Optional<HarmfulMoves> procedure(
            Procedure procedure, List<Verdict> verdicts, Pilot hands) {
        List<HarmfulMoves> each = new ArrayList<>();
        Map<List<String>, Timeline> timelines = new HashMap<>();
        for (Verdict verdict : verdicts) {
            Written written =
                    new Written(
                            procedure.name(),
                            procedure.moves(),
                            Optional.of(verdict.failure().name()),
                            procedure.name());
            Play play =
                    order -> {
                        List<String> levers = List.copyOf(order.keySet());
                        Timeline known = timelines.get(levers);
                        Timeline timeline =
                                known == null
                                        ? Timeline.quick(study, ordered(procedure, order))
                                        : known;
                        timelines.put(levers, timeline);
                        return timeline.tell(verdict.failure(), hands);
                    };
            audit(written, verdict.with(hands), play).ifPresent(each::add);
        }
        return each.stream()
                .findFirst()
                .map(
                        first ->
                                new HarmfulMoves(
                                        first.what(),
                                        first.written(),
                                        first.after(),
                                        each.size() - 1,
                                        first.harm(),
                                        first.better()));
    }

    private Candidate ordered(Procedure procedure, Map<String, String> order) {
        Procedure other =
                new Procedure(
                        procedure.name(),
                        procedure.when(),
                        procedure.responseSeconds(),
                        order,
                        procedure.sheds(),
                        procedure.execution());
        return candidate.with(
                candidate
                        .cockpit()
                        .with(
                                candidate.cockpit().procedures().stream()
                                        .map(p -> p.equals(procedure) ? other : p)
                                        .toList()));
    }

    /** Nothing is said of what cannot be computed. */
    private static Optional<HarmfulMoves> audit(Written written, Story story, Play play) {
        try {
            return played(written, AdverseEffect.of(story, written.who), play);
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private static Optional<HarmfulMoves> played(Written of, List<StoryEvent> harm, Play play)
            throws UntoldStory {
        if (harm.isEmpty()) {
            return Optional.empty();
        }
        Set<Sort> worst = sorts(harm);
        Map<String, String> best = of.moves;
        Set<Sort> least = worst;
        for (Map<String, String> order : MoveOrders.others(of.moves)) {
            Set<Sort> now = sorts(AdverseEffect.of(play.in(order), of.who));
            if (now.size() < least.size() && worst.containsAll(now)) {
                least = now;
                best = order;
            }
        }
        if (best.equals(of.moves) && least.size() == worst.size()) {
            return Optional.empty();
        }
        Set<Sort> left = least;
        StoryEvent first =
                harm.stream().filter(e -> !left.contains(Sort.of(e))).findFirst().orElseThrow();
        return Optional.of(new HarmfulMoves(of.what, of.moves, of.after, 0, first, best));
    }

    private static Set<Sort> sorts(List<StoryEvent> events) {
        Set<Sort> sorts = new HashSet<>();
        events.forEach(event -> sorts.add(Sort.of(event)));
        return sorts;
    }
}

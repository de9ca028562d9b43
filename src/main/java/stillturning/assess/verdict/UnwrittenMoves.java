package stillturning.assess.verdict;

import java.util.Comparator;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.parts.Lever;
import stillturning.story.FirstSign;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Setting.Act;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * Looks for single moves that would save an engine to which no procedure helps: every switch that
 * is not stated to be out of reach is played in every position. What is found is a proposal for the
 * builder, played after one failure only, and no procedure.
 */
public final class UnwrittenMoves {

    private UnwrittenMoves() {}

    /**
     * The move with which the engine lasts longest after a failure that ends it; empty where it
     * lasts without one, where nothing shows the failure, or where no single move helps.
     */
    public static Optional<UnwrittenMove> saving(
            Study study, Candidate candidate, Verdict verdict) {
        Story planned = verdict.planned();
        Optional<FirstSign> sign = planned.engine().sign();
        if (!misses(study, planned) || sign.isEmpty()) {
            return Optional.empty();
        }
        double from = sign.get().seconds() + UnwrittenMove.AFTER_SIGN_SECONDS;
        try {
            Timeline timeline = Timeline.quick(study, candidate).exact();
            Optional<Tried> best =
                    LeverMoves.of(candidate, lever -> isSwitchInReach(candidate, lever)).stream()
                            .map(moves -> tried(timeline, verdict.failure(), new Act(moves, from)))
                            .flatMap(Optional::stream)
                            .filter(tried -> !misses(study, tried.story))
                            .max(
                                    Comparator.comparing((Tried t) -> -t.story.engine().stops())
                                            .thenComparing(
                                                    t -> t.story.engine().endurance().seconds()));
            return best.isEmpty() ? Optional.empty() : found(timeline, best.get());
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private record Tried(Map<String, String> moves, Story story) {}

    private static boolean misses(Study study, Story story) {
        return story.untold().isPresent() || story.engine().misses(study.landing());
    }

    private static boolean isSwitchInReach(Candidate candidate, Lever lever) {
        return !lever.positions().equals(Lever.PULLED)
                && candidate
                        .cockpit()
                        .reachOf(lever.name())
                        .filter(reach -> reach != Reach.SEAT)
                        .isEmpty();
    }

    private static Optional<Tried> tried(Timeline timeline, Failure failure, Act act) {
        try {
            Setting setting = Setting.with(Pilot.PLANNED).with(act);
            return Optional.of(new Tried(act.moves(), timeline.tell(failure, setting)));
        } catch (UntoldStory e) {
            return Optional.empty();
        }
    }

    private static Optional<UnwrittenMove> found(Timeline timeline, Tried tried) {
        Failure nothing = Failure.levers("nothing", Map.of());
        return tried(timeline, nothing, new Act(tried.moves, UnwrittenMove.AFTER_SIGN_SECONDS))
                .map(needless -> new UnwrittenMove(tried.moves, tried.story, needless.story));
    }
}

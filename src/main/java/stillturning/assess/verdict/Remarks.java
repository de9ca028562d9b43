package stillturning.assess.verdict;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import stillturning.assess.verdict.Remark.Topic;
import stillturning.model.CountsFrom;
import stillturning.quantity.Formats;
import stillturning.story.FirstSign;
import stillturning.story.Story;
import stillturning.story.Story.EngineFate;
import stillturning.story.StoryEvent;

/** What is said beside an outcome, from the story that it sums up. */
final class Remarks {

    private static final String UNTOLD =
            "what follows cannot be computed and so counts as the end of the engine";

    /** Who notices a failure within this time has noticed it at once (s). A guess. */
    private static final double AT_ONCE_SECONDS = 60;

    private Remarks() {}

    static List<Remark> of(Outcome outcome, Story story, Story unaided) {
        List<Remark> remarks = new ArrayList<>();
        EngineFate engine = story.engine();
        story.untold()
                .ifPresent(reason -> remarks.add(new Remark(Topic.UNTOLD, UNTOLD + ": " + reason)));
        List<StoryEvent> failed = story.of(StoryEvent.Kind.CRANKING_FAILS);
        if (!engine.runningAtEnd() && !failed.isEmpty()) {
            String why = failed.get(failed.size() - 1).words();
            remarks.add(
                    new Remark(
                            Topic.CANNOT_BE_STARTED,
                            "the engine cannot be started again; the last time it " + why));
        }
        if (engine.endurance().ends()) {
            engine.sign()
                    .filter(sign -> late(sign, engine))
                    .ifPresent(sign -> remarks.add(unseen(sign, engine)));
        }
        if (outcome != Outcome.ENGINE_LOST) {
            laterLoss(unaided).ifPresent(remarks::add);
        }
        if (outcome != Outcome.ENGINE_LOST && engine.endurance().ends()) {
            remarks.add(
                    new Remark(
                            Topic.STOPS_LATER,
                            "the engine stops for good after "
                                    + Formats.lasting(engine.endurance().seconds())));
        }
        if (outcome == Outcome.REDUNDANCY_LOST && engine.interrupted()) {
            remarks.add(new Remark(Topic.FALTERED_BEFORE, interruption(story)));
        }
        return List.copyOf(remarks);
    }

    /** What nobody who does nothing escapes, though the outcome counts only what comes at once. */
    private static Optional<Remark> laterLoss(Story unaided) {
        List<StoryEvent> losses =
                unaided.happenings().stream().filter(event -> isLaterLoss(unaided, event)).toList();
        if (losses.isEmpty()) {
            return Optional.empty();
        }
        String lost =
                losses.stream().map(StoryEvent::part).distinct().collect(Collectors.joining(", "));
        return Optional.of(
                new Remark(
                        Topic.LOSS_LATER,
                        "ends in loss after "
                                + Formats.lasting(losses.get(0).seconds())
                                + " if nobody acts: of "
                                + lost));
    }

    private static boolean isLaterLoss(Story unaided, StoryEvent event) {
        if (event.kind() == StoryEvent.Kind.LOAD_DESTROYED) {
            return unaided.aftermath().working().contains(event.part());
        }
        return event.kind() == StoryEvent.Kind.BATTERY_DISCONNECTS
                && unaided.of(StoryEvent.Kind.BATTERY_GASSES).stream()
                        .filter(gas -> gas.part().equals(event.part()))
                        .anyMatch(gas -> event.seconds() - gas.seconds() > AT_ONCE_SECONDS);
    }

    private static boolean late(FirstSign sign, EngineFate engine) {
        return sign.seconds() > AT_ONCE_SECONDS
                && sign.seconds() > engine.endurance().seconds() / 2;
    }

    private static Remark unseen(FirstSign sign, EngineFate engine) {
        String after = Formats.lasting(sign.seconds());
        double left = engine.lastsFrom(CountsFrom.FIRST_SIGN);
        return new Remark(
                Topic.UNSEEN,
                sign.from() == FirstSign.From.ENGINE
                        ? "nobody sees it until " + sign.words() + ", after " + after
                        : "nobody sees it until "
                                + Formats.lasting(left)
                                + " before the engine stops: "
                                + sign.words()
                                + ", after "
                                + after);
    }

    private static String interruption(Story story) {
        EngineFate engine = story.engine();
        return engine.stoppedAndCameBack()
                ? "before that it stops, and runs again after "
                        + Formats.duration(
                                story.of(StoryEvent.Kind.ENGINE_RESTARTS).get(0).seconds())
                : "before that it falters for "
                        + Formats.duration(engine.longestInterruptionSeconds());
    }
}

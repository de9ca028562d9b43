package stillturning.sizing;

import java.util.ArrayList;
import java.util.List;
import stillturning.sizing.result.CrankingSupply;
import stillturning.sizing.result.CrankingSupply.Fed;
import stillturning.story.StartAttempt;
import stillturning.story.StoryEvent;
import stillturning.story.timeline.Timeline;

/** What is left for the engine's loads while the starter turns it. */
final class Starting {

    private final Subject subject;

    Starting(Subject subject) {
        this.subject = subject;
    }

    /** A start as stated and a hard one; none where the study has no starter. */
    List<CrankingSupply> all() {
        List<CrankingSupply> all = new ArrayList<>();
        for (boolean hard : List.of(false, true)) {
            Timeline.start(subject.study(), subject.candidate(), hard)
                    .ifPresent(start -> all.add(cranking(start, hard)));
        }
        return all;
    }

    private CrankingSupply cranking(StartAttempt start, boolean hard) {
        List<Fed> loads = new ArrayList<>();
        start.lowestVolts()
                .forEach(
                        (load, volts) ->
                                subject.study()
                                        .aircraft()
                                        .load(load)
                                        .filter(need -> !need.selfPowered())
                                        .ifPresent(
                                                need ->
                                                        loads.add(
                                                                new Fed(
                                                                        load,
                                                                        volts,
                                                                        need.tolerance()
                                                                                .minimumVolts(),
                                                                        start.resets()
                                                                                .contains(load)))));
        return new CrankingSupply(
                start.conditions(),
                hard,
                start.runs(),
                start.starterAmps(),
                loads,
                start.happenings().stream()
                        .filter(h -> h.kind() == StoryEvent.Kind.PROTECTOR_OPENS)
                        .map(StoryEvent::part)
                        .toList());
    }
}

package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import stillturning.model.Candidate;
import stillturning.model.Candidate.Hit;
import stillturning.model.failure.Failure;
import stillturning.story.AdverseEffect;
import stillturning.story.PilotView;
import stillturning.story.Rehearsal;
import stillturning.story.Rehearsal.MovePace;
import stillturning.story.Rehearsal.Moved;
import stillturning.story.Spell;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/**
 * A candidate on the ground that is held in one condition after the other. Charges and heats go on
 * from each to the next; what is put together again is as it was when it was taken apart.
 */
final class Bench {

    private final Candidate candidate;
    private final Function<List<Hit>, Run> runs;
    private final Map<String, Device> latest;
    private List<Hit> apart = List.of();
    private Run run;

    /**
     * @param healthy at rest with nothing wrong
     * @param runs a fresh one with parts taken apart
     */
    Bench(Candidate candidate, Run healthy, Function<List<Hit>, Run> runs) {
        this.candidate = candidate;
        this.runs = runs;
        this.latest = new HashMap<>(healthy.devices());
        this.run = next(healthy, List.of());
    }

    /**
     * What follows until the condition has been held for its time.
     *
     * @throws UntoldStory if a state on the way cannot be computed
     */
    Spell hold(Spell.HeldCondition condition) throws UntoldStory {
        if (!condition.apart().equals(apart)) {
            latest.putAll(run.devices());
            apart = condition.apart();
            run = next(run, apart);
        }
        return held(condition);
    }

    private Spell held(Spell.HeldCondition condition) throws UntoldStory {
        Situation now = run.now();
        PilotViewRecorder looker = run.looker();
        looker.begin();
        int from = now.journal.happenings().size();
        double begun = now.seconds;
        now.levers.putAll(levers(condition));
        now.shed.only(condition.off());
        now.log(StoryEvent.Kind.PILOT, AdverseEffect.COCKPIT, condition.words());
        now.journal.solved();
        run.carryOn(begun + condition.seconds());
        List<StoryEvent> all = now.journal.happenings();
        return new Spell(
                condition,
                all.subList(from, all.size()).stream().map(e -> e.since(begun)).toList(),
                looker.sight(),
                run.state(),
                run.flow());
    }

    /**
     * Goes through positions of levers one after the other.
     *
     * @param steps positions by lever, moved one after the other in their order
     * @throws UntoldStory if a state on the way cannot be computed
     */
    static Rehearsal rehearse(
            Run run, Failure failure, List<Map<String, String>> steps, MovePace pace)
            throws UntoldStory {
        run.inject(failure);
        PilotViewRecorder looker = run.looker();
        Situation now = run.now();
        List<PilotView> sights = new ArrayList<>();
        List<Moved> moved = new ArrayList<>();
        for (Map<String, String> step : steps) {
            looker.begin();
            int made = 0;
            for (Map.Entry<String, String> move : step.entrySet()) {
                made++;
                moved.add(new Moved(sights.size(), made, move.getKey(), run.happenings().size()));
                now.levers.put(move.getKey(), move.getValue());
                if (made < step.size()) {
                    run.carryOn(now.seconds + pace.moveSeconds());
                }
            }
            run.carryOn(now.seconds + pace.heldSeconds());
            sights.add(looker.sight());
        }
        return Rehearsal.of(sights, moved, run.happenings());
    }

    private Run next(Run last, List<Hit> hits) {
        Run next = runs.apply(hits);
        next.resume(last, name -> Optional.ofNullable(latest.get(name)).or(() -> last.like(name)));
        return next;
    }

    private Map<String, String> levers(Spell.HeldCondition condition) {
        Map<String, String> all = new HashMap<>();
        candidate.parts().stream()
                .flatMap(part -> part.levers().stream())
                .forEach(lever -> all.put(lever.name(), lever.usual()));
        all.putAll(candidate.cockpit().flight());
        all.putAll(condition.levers());
        return all;
    }
}

package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.groundtest.GroundTests.RevealingHand;
import stillturning.reliability.groundtest.Observation.Twice;
import stillturning.story.Spell;
import stillturning.story.Spell.HeldCondition;
import stillturning.story.UntoldStory;

/** Divides steps into stages that no battery finds too long, and plays them. */
final class Staging {

    /** Share of a battery's capacity after which it is charged again. A guess. */
    private static final double GIVEN = 0.5;

    /** How much longer somebody may take who measures and writes. A guess. */
    private static final double SLOWLY = 2;

    private final Observation observation;

    Staging(Study study, Candidate candidate) {
        this.observation = new Observation(study, candidate);
    }

    /**
     * Stages of steps in their order.
     *
     * @param shown names of failures by what shows them
     * @param first number of the first step
     * @throws UntoldStory if they cannot be played to their end
     */
    List<Stage> stages(Rig rig, List<Map.Entry<RevealingHand, List<String>>> shown, int first)
            throws UntoldStory {
        List<Stage> stages = new ArrayList<>();
        int next = 0;
        while (next < shown.size()) {
            List<Map.Entry<RevealingHand, List<String>>> rest = shown.subList(next, shown.size());
            int count = withoutCharging(rig, rest);
            stages.add(stage(rig, rest.subList(0, count), first + next));
            next += count;
        }
        return stages;
    }

    private static List<HeldCondition> conditions(
            Rig rig, List<Map.Entry<RevealingHand, List<String>>> shown) {
        List<HeldCondition> all = new ArrayList<>();
        all.add(rig.intact("begins", Optional.empty()));
        shown.forEach(e -> all.addAll(rig.conditions(e.getKey().hand(), e.getKey().on())));
        return all;
    }

    /** How many steps fit before a battery wants charging; one at least. */
    private static int withoutCharging(Rig rig, List<Map.Entry<RevealingHand, List<String>>> shown)
            throws UntoldStory {
        List<Spell> slow = rig.played(conditions(rig, shown), SLOWLY);
        Map<String, Double> begun = new HashMap<>(slow.get(0).flow().charges());
        int at = 1;
        for (int step = 0; step < shown.size(); step++) {
            at +=
                    rig.conditions(shown.get(step).getKey().hand(), shown.get(step).getKey().on())
                            .size();
            boolean low =
                    slow.get(at - 1).flow().charges().entrySet().stream()
                            .anyMatch(
                                    e ->
                                            begun.getOrDefault(e.getKey(), 1.0) - e.getValue()
                                                    > GIVEN);
            if (low) {
                return Math.max(1, step);
            }
        }
        return shown.size();
    }

    private Stage stage(Rig rig, List<Map.Entry<RevealingHand, List<String>>> shown, int first)
            throws UntoldStory {
        List<HeldCondition> conditions = conditions(rig, shown);
        List<Spell> quick = rig.played(conditions, 1);
        List<Spell> slow = rig.played(conditions, SLOWLY);
        List<TestStep> steps = new ArrayList<>();
        int at = 1;
        for (Map.Entry<RevealingHand, List<String>> one : shown) {
            RevealingHand showing = one.getKey();
            int open = at + (showing.on().isPresent() ? 1 : 0);
            Twice before = new Twice(quick.get(open - 1), slow.get(open - 1));
            Twice then = new Twice(quick.get(open), slow.get(open));
            steps.add(
                    new TestStep(
                            first + steps.size(),
                            showing.hand(),
                            showing.on(),
                            observation.expected(before, then),
                            observation.readings(before, then),
                            one.getValue()));
            at += rig.conditions(showing.hand(), showing.on()).size();
        }
        return new Stage(
                rig.configuration(),
                rig.configuration() == Configuration.ENGINE_STOPPED,
                rig.off(),
                quick.get(0).state().cuesShowing(),
                observation.all(new Twice(quick.get(0), slow.get(0))),
                steps);
    }
}

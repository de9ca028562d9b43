package stillturning.reliability.groundtest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.groundtest.Observation.Twice;
import stillturning.story.Spell;
import stillturning.story.UntoldStory;

/**
 * Steps of a plan tried again, each by itself, in an aircraft whose values may be others than those
 * for which it was planned: what instruments would show then.
 */
public final class Replay {

    private final Rig rig;
    private final Observation observation;

    /**
     * An aircraft in a configuration.
     *
     * @throws UntoldStory if it has no steady state there
     */
    public Replay(Study study, Candidate candidate, Configuration configuration)
            throws UntoldStory {
        this.rig = Rig.of(study, candidate, configuration);
        this.observation = new Observation(study, candidate);
    }

    /**
     * Volts and amps of every bus and source.
     *
     * @param step that is made; empty for before the first
     * @throws UntoldStory if what follows cannot be computed
     */
    public List<InstrumentReading> readings(Optional<TestStep> step) throws UntoldStory {
        Optional<String> on = step.flatMap(TestStep::switchedOn);
        List<Spell.HeldCondition> conditions = new ArrayList<>();
        conditions.add(rig.intact("begins", on));
        step.ifPresent(s -> conditions.add(rig.opened(s.hand(), on)));
        List<Spell> played = rig.tried(conditions);
        Spell last = played.get(played.size() - 1);
        return observation.all(new Twice(last, last));
    }
}

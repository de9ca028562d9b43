package stillturning.assess.requirement;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.PilotBurden;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Requirement;
import stillturning.story.StartAttempt;

/**
 * The same evidence of some of the single failures.
 *
 * @param whole of all of them
 * @param some verdicts on those
 * @param restarting tries to start the engine again after each of some
 */
public record SomeFailures(
        Evidence whole, Supplier<List<Verdict>> some, Function<List<Verdict>, Restarts> restarting)
        implements Evidence {

    @Override
    public List<Verdict> singles() {
        return some.get();
    }

    @Override
    public Optional<Verdict> masterOff() {
        return whole.masterOff();
    }

    @Override
    public Verdict chargingLost() {
        return whole.chargingLost();
    }

    @Override
    public Burdens burdens() {
        return whole.burdens();
    }

    @Override
    public PilotBurden pilot() {
        return whole.pilot();
    }

    @Override
    public Optional<StartAttempt> coldStart() {
        return whole.coldStart();
    }

    @Override
    public Restarts restarts() {
        return restarting.apply(singles());
    }

    @Override
    public Optional<List<String>> departures() {
        return whole.departures();
    }

    @Override
    public Optional<RequirementMet> surveyed(Requirement requirement) {
        return whole.surveyed(requirement);
    }
}

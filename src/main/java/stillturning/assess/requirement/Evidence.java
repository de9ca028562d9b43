package stillturning.assess.requirement;

import java.util.List;
import java.util.Optional;
import stillturning.assess.Appraisal.RequirementMet;
import stillturning.assess.PilotBurden;
import stillturning.assess.verdict.Verdict;
import stillturning.model.Burdens;
import stillturning.model.Requirement;
import stillturning.story.StartAttempt;

/** What is held against the requirements. */
public interface Evidence {

    /** Single failures: all, or some if it is only to be found out whether one breaks a limit. */
    List<Verdict> singles();

    /** The drill that takes all power off the airframe, if there is one. */
    Optional<Verdict> masterOff();

    /** All charging sources failing. */
    Verdict chargingLost();

    Burdens burdens();

    PilotBurden pilot();

    /** The start in the cold with tired batteries, if the study has a starter. */
    Optional<StartAttempt> coldStart();

    /** The engine started again in flight after each of the single failures. */
    Restarts restarts();

    /** Parts that are other than in the baseline; empty where the baseline is not there. */
    Optional<List<String>> departures();

    /** What the rooms that know say of a requirement. */
    Optional<RequirementMet> surveyed(Requirement requirement);
}

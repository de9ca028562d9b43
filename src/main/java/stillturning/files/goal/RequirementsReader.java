package stillturning.files.goal;

import java.util.ArrayList;
import java.util.List;
import stillturning.files.entry.StudyEntry.RequirementsEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Requirement;

/** Reads what a study requires. */
public final class RequirementsReader {

    private final RequirementsEntry written;
    private final ProblemCollector report;

    public RequirementsReader(RequirementsEntry written, ProblemCollector report) {
        this.written = written;
        this.report = report;
    }

    /** The requirements, in the order of the file's description. */
    public List<Requirement> read() {
        List<Requirement> requirements = new ArrayList<>();
        if (written.noSingleFailureStopsEngine()) {
            requirements.add(new Requirement.NoSingleFailureStopsEngine());
        }
        if (written.runsWithMasterOff()) {
            requirements.add(new Requirement.RunsWithMasterOff());
        }
        written.enduranceWithoutCharging()
                .map(q -> new Requirement.EnduranceWithoutCharging(q.si()))
                .ifPresent(requirements::add);
        written.interruptionBelow()
                .map(q -> new Requirement.InterruptionBelow(q.si()))
                .ifPresent(requirements::add);
        if (written.restartsInFlight()) {
            requirements.add(new Requirement.RestartsInFlight());
        }
        if (written.startsCold()) {
            requirements.add(new Requirement.StartsCold());
        }
        written.weightAtMost()
                .map(q -> new Requirement.WeightAtMost(q.si()))
                .ifPresent(requirements::add);
        if (requirements.isEmpty()) {
            report.remark(
                    Spot.atKey("requirements"),
                    "the study has no hard requirement, so none can be missed; if some were"
                            + " written, the end of the file is missing");
        }
        return requirements;
    }
}

package stillturning.files.goal;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.entry.LoadEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.files.entry.StudyEntry.ArmEntry;
import stillturning.files.entry.StudyEntry.RequirementsEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Requirement;
import stillturning.yaml.DocumentPlaces;

/** Reads what a study requires. */
public final class RequirementsReader {

    private static final String REQUIREMENTS = "requirements";

    private final StudyEntry study;
    private final RequirementsEntry written;
    private final ProblemCollector report;

    public RequirementsReader(StudyEntry study, ProblemCollector report) {
        this.study = study;
        written = study.requirements();
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
        written.costAtMost()
                .map(price -> new Requirement.CostAtMost(price, study.currency()))
                .ifPresent(requirements::add);
        requirements.addAll(neverDark());
        written.actsAtMost().map(Requirement.ActsAtMost::new).ifPresent(requirements::add);
        departures().ifPresent(requirements::add);
        if (written.noSizeLimitBroken()) {
            requirements.add(new Requirement.NoSizeLimitBroken());
        }
        arm().ifPresent(requirements::add);
        written.noLatentPair().map(Requirement.NoLatentPair::new).ifPresent(requirements::add);
        if (requirements.isEmpty()) {
            report.remark(
                    Spot.atKey("requirements"),
                    "the study has no hard requirement, so none can be missed; if some were"
                            + " written, the end of the file is missing");
        }
        return requirements;
    }

    private List<Requirement> neverDark() {
        List<Requirement> requirements = new ArrayList<>();
        for (int i = 0; i < written.neverDark().size(); i++) {
            String load = written.neverDark().get(i);
            String path = DocumentPlaces.item(DocumentPlaces.under(REQUIREMENTS, "never-dark"), i);
            LoadEntry entry = study.loads().get(load);
            if (entry == null) {
                report.unknown(new Spot(path, 0), "load", load, study.loads().keySet());
            } else if (written.neverDark().indexOf(load) < i) {
                report.problem(path, "\"" + load + "\" is already there", "take it out");
            } else {
                requirements.add(
                        new Requirement.NoSingleFailureDarkens(load, entry.label().orElse(load)));
            }
        }
        return requirements;
    }

    private Optional<Requirement> departures() {
        Optional<Integer> most = written.departuresAtMost();
        if (most.isPresent() && study.baseline().isEmpty()) {
            report.problem(
                    DocumentPlaces.under(REQUIREMENTS, "departures-at-most"),
                    "the study names no baseline to depart from",
                    "write the engine maker's own layout as baseline:");
            return Optional.empty();
        }
        return most.map(Requirement.DeparturesAtMost::new);
    }

    private Optional<Requirement> arm() {
        Optional<ArmEntry> arm = written.arm();
        if (arm.filter(a -> !(a.least().si() < a.most().si())).isPresent()) {
            report.problem(
                    DocumentPlaces.under(DocumentPlaces.under(REQUIREMENTS, "arm"), "most"),
                    "it is not behind the foremost place",
                    "write more for most than for least");
            return Optional.empty();
        }
        return arm.map(a -> new Requirement.ArmBetween(a.least().si(), a.most().si()));
    }
}

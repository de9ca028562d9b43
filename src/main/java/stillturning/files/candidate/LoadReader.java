package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.files.entry.LoadEntry;
import stillturning.files.entry.Names;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.LoadNeed;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Demand.DemandKind;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.Tolerance.OwnBattery;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;

/** Makes a study's loads of what is written. */
final class LoadReader {

    /** How long an instrument's own battery takes to be full again (s). A guess. */
    private static final double RECHARGES_SECONDS = 3 * 3600;

    /** Terminal of every load's return, so no input can be called that. */
    private static final String MINUS = "minus";

    /** Stands for a current that is missing, which is told (A). */
    private static final double UNKNOWN_AMPS = 1;

    private final StudyEntry study;
    private final ProblemCollector report;

    LoadReader(StudyEntry study, ProblemCollector report) {
        this.study = study;
        this.report = report;
    }

    /** Every load that could be made. */
    List<LoadNeed> read() {
        List<LoadNeed> loads = new ArrayList<>();
        study.loads().forEach((id, entry) -> load(id, entry).ifPresent(loads::add));
        return loads;
    }

    private Optional<LoadNeed> load(String id, LoadEntry entry) {
        String path = DocumentPlaces.under("loads", id);
        report.refusePoint(Spot.atKey(path), id);
        if (!study.zones().containsKey(entry.zone())) {
            report.unknown(
                    new Spot(DocumentPlaces.under(path, "zone"), 0),
                    "zone",
                    entry.zone(),
                    study.zones().keySet());
        }
        phases(entry, path);
        if (entry.as() == DemandKind.SELF_POWERED) {
            needsNothing(entry, path);
        } else {
            draws(entry, path);
            inputs(entry, path);
        }
        try {
            return Optional.of(need(id, entry));
        } catch (IllegalArgumentException refused) {
            report.problem(
                    path, String.valueOf(refused.getMessage()), "correct the values of this load");
            return Optional.empty();
        }
    }

    private void phases(LoadEntry entry, String path) {
        List<String> known = phaseNames();
        for (int i = 0; i < entry.phases().size(); i++) {
            if (!known.contains(entry.phases().get(i))) {
                String at = DocumentPlaces.item(DocumentPlaces.under(path, "phases"), i);
                report.unknown(new Spot(at, 0), "phase", entry.phases().get(i), known);
            }
        }
    }

    private List<String> phaseNames() {
        return study.phases().stream().map(StudyEntry.PhaseEntry::name).toList();
    }

    private void needsNothing(LoadEntry entry, String path) {
        if (entry.draws().isPresent()) {
            report.problem(
                    DocumentPlaces.under(path, "draws"),
                    "a self-powered load draws nothing",
                    "take the line out, or write what it is to a bus: as: constant-power");
        }
        if (entry.ownBattery().isPresent()) {
            report.problem(
                    DocumentPlaces.under(path, "own-battery"),
                    "a self-powered load has no feed that it could lose",
                    "take the line out");
        }
    }

    private void draws(LoadEntry entry, String path) {
        if (entry.draws().isEmpty()) {
            report.problem(Spot.atKey(path), "\"draws\" is missing", "add a line: draws: 5 A");
        }
    }

    private void inputs(LoadEntry entry, String path) {
        String at = DocumentPlaces.under(path, "inputs");
        Set<String> seen = new HashSet<>();
        if (entry.inputs().isEmpty()) {
            report.problem(at, "the load has no input", "write at least one, or take the line out");
        }
        for (int i = 0; i < entry.inputs().size(); i++) {
            String input = entry.inputs().get(i);
            String item = DocumentPlaces.item(at, i);
            if (input.equals(MINUS)) {
                report.problem(item, "\"minus\" is the load's return", "call the input plus");
            } else if (!Names.isPlain(input)) {
                report.problem(
                        item,
                        "\"" + input + "\" cannot be a name",
                        "use lower case letters, digits and hyphens");
            } else if (!seen.add(input)) {
                report.problem(item, "\"" + input + "\" is already there", "keep one of the two");
            }
        }
    }

    private LoadNeed need(String id, LoadEntry entry) {
        boolean own = entry.as() == DemandKind.SELF_POWERED;
        double draws = own ? 0 : entry.draws().map(LoadReader::si).orElse(UNKNOWN_AMPS);
        Set<String> phases =
                new HashSet<>(entry.phases().isEmpty() ? phaseNames() : entry.phases());
        return new LoadNeed(
                id,
                entry.label().orElseGet(() -> Names.spoken(id)),
                entry.zone(),
                new Demand(entry.as(), draws, study.nominal().si()),
                tolerance(entry),
                own ? List.of() : entry.inputs(),
                new LoadNeed.Use(phases, si(entry.duty()), entry.noticed(), inrush(entry)),
                entry.shed().map(OptionalInt::of).orElseGet(OptionalInt::empty));
    }

    private static LoadNeed.Inrush inrush(LoadEntry entry) {
        return new LoadNeed.Inrush(
                entry.inrush().map(LoadReader::si).orElse(0.0), si(entry.inrushFor()));
    }

    private static Tolerance tolerance(LoadEntry entry) {
        return new Tolerance(
                si(entry.minimum()),
                si(entry.restart().orElse(entry.minimum())),
                si(entry.rideThrough()),
                si(entry.boot()),
                entry.withstand().map(LoadReader::si).orElse(Double.POSITIVE_INFINITY),
                si(entry.withstandFor()),
                entry.ownBattery()
                        .map(
                                b ->
                                        new OwnBattery(
                                                si(b),
                                                entry.recharges()
                                                        .map(LoadReader::si)
                                                        .orElse(RECHARGES_SECONDS))));
    }

    private static double si(Given given) {
        return given.quantity().si();
    }
}

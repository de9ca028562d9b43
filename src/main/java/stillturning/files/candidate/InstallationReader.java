package stillturning.files.candidate;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.CandidateEntry.WireNote;
import stillturning.files.entry.StudyEntry;
import stillturning.files.entry.StudyEntry.WiringEntry;
import stillturning.files.entry.Values;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.files.value.ValueLog;
import stillturning.model.Installation;
import stillturning.model.Installation.FittedParts;
import stillturning.model.Installation.Lay;
import stillturning.model.Installation.Laying;
import stillturning.model.Installation.Nature;
import stillturning.parts.Part;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;

/** Makes of what is written what only the checking of sizes asks for. */
public final class InstallationReader {

    private InstallationReader() {}

    /** What the study says, with what was found out about each candidate. */
    public static Installation of(StudyEntry study, Map<String, FittedParts> fits) {
        Map<String, Double> arms = new LinkedHashMap<>();
        study.zones().forEach((zone, z) -> z.arm().ifPresent(arm -> arms.put(zone, si(arm))));
        Map<String, Nature> natures = new LinkedHashMap<>();
        study.loads().forEach((load, entry) -> natures.put(load, entry.switchedAs()));
        return new Installation(laying(study.wiring()), arms, natures, fits);
    }

    /** How wires lie that say nothing else. */
    static Laying laying(WiringEntry wiring) {
        return new Laying(
                si(wiring.altitude()),
                si(wiring.insulation()),
                wiring.bundle(),
                si(wiring.loaded()));
    }

    /** What a candidate says; tells wires and parts that it does not have. */
    static FittedParts fit(
            CandidateEntry candidate, Assembly assembly, ProblemCollector report, ValueLog ledger) {
        Map<String, Lay> wires = new LinkedHashMap<>();
        candidate
                .wires()
                .forEach(
                        (id, note) -> {
                            String path = DocumentPlaces.under("wires", id);
                            known(id, path, "wire", assembly, report);
                            wires.put(id, lay(Values.mapped(note, path, ledger)));
                        });
        Map<String, Double> arms = new LinkedHashMap<>();
        candidate
                .arms()
                .forEach(
                        (id, arm) -> {
                            String path = DocumentPlaces.under("arms", id);
                            known(id, path, "part", assembly, report);
                            arms.put(id, si(ledger.given(path, arm)));
                        });
        return new FittedParts(wires, arms, assembly.contactAmps(), assembly.interruptAmps());
    }

    private static void known(
            String id, String path, String kind, Assembly assembly, ProblemCollector report) {
        boolean wire = kind.equals("wire");
        boolean there =
                assembly.part(id).filter(p -> !wire || p.role() == Part.Role.WIRE).isPresent()
                        || (assembly.part(id).isEmpty() && assembly.knows(id));
        if (!there) {
            report.unknown(
                    Spot.atKey(path),
                    kind,
                    id,
                    assembly.parts().stream()
                            .filter(p -> !wire || p.role() == Part.Role.WIRE)
                            .map(Part::id)
                            .toList());
        }
    }

    private static Lay lay(WireNote note) {
        return new Lay(
                note.colour(),
                note.terminals(),
                note.insulation().map(t -> OptionalDouble.of(si(t))).orElse(OptionalDouble.empty()),
                note.bundle().map(OptionalInt::of).orElse(OptionalInt.empty()));
    }

    private static double si(Given given) {
        return given.quantity().si();
    }
}

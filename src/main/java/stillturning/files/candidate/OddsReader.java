package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.candidate.Expanded.ExpandedPart;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.RateText;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Chances.Mode;
import stillturning.model.Chances.Odds;
import stillturning.model.Chances.Rate;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.parts.Part;
import stillturning.yaml.DocumentPlaces;

/** Makes of a candidate's file how often its parts fail, alone and together. */
final class OddsReader {

    private final CandidateEntry candidate;
    private final Assembly assembly;
    private final ProblemCollector report;
    private final Map<String, List<String>> wiresByRun = new LinkedHashMap<>();

    OddsReader(
            CandidateEntry candidate,
            List<Expanded> expanded,
            Assembly assembly,
            ProblemCollector report) {
        this.candidate = candidate;
        this.assembly = assembly;
        this.report = report;
        Map<String, List<ExpandedPart>> made = new LinkedHashMap<>();
        expanded.forEach(e -> made.put(e.path(), e.parts()));
        candidate
                .links()
                .keySet()
                .forEach(key -> run(key, DocumentPlaces.under("links", key), made));
        candidate
                .feeds()
                .keySet()
                .forEach(key -> run(key, DocumentPlaces.under("feeds", key), made));
    }

    private void run(String key, String path, Map<String, List<ExpandedPart>> made) {
        List<String> wires =
                made.getOrDefault(path, List.of()).stream()
                        .map(ExpandedPart::id)
                        .filter(this::isWire)
                        .toList();
        wiresByRun.putIfAbsent(key, wires);
    }

    private boolean isWire(String id) {
        return assembly.part(id).filter(OddsReader::isWire).isPresent();
    }

    /** What is known of the candidate. */
    Odds read(ChancesReader.StatedChances said, CheckedStudy frame) {
        candidate.fails().forEach((part, rates) -> fails(part, rates, said.rates()));
        List<Shared> shared = new ArrayList<>();
        said.shared().forEach(s -> here(s).ifPresent(shared::add));
        shared.addAll(
                new SharesReader(this::named, said.beta(), said.shared(), report)
                        .read(candidate.shares()));
        for (int i = 0; i < candidate.shares().size(); i++) {
            if (candidate.shares().get(i).alike().isPresent()) {
                oneKind(candidate.shares().get(i).parts(), DocumentPlaces.item("shares", i));
            }
        }
        Map<Mode, Rate> rates =
                new LinkedHashMap<>(
                        said.rates().with(Map.of(), candidate.fails()).of(assembly.parts()));
        candidate.sees().keySet().forEach(cue -> rates.putAll(said.rates().ofLamp(cue)));
        return new Odds(rates, shared, Routes.of(assembly, frame.zones()));
    }

    private void fails(String id, Map<String, RateText> rates, RateBook book) {
        String path = DocumentPlaces.under("fails", id);
        Optional<Part> part = assembly.part(id);
        part.ifPresent(p -> book.check(rates, p, path, report));
        if (part.isEmpty() && !assembly.knows(id)) {
            report.unknown(Spot.atKey(path), "part", id, assembly.names());
        }
    }

    /** What is shared by loads that the candidate has. */
    private Optional<Shared> here(Shared shared) {
        List<String> parts =
                shared.parts().stream().filter(p -> assembly.part(p).isPresent()).toList();
        return parts.size() < 2
                ? Optional.empty()
                : Optional.of(new Shared(shared.sharing(), shared.name(), parts, shared.beta()));
    }

    /** Tells things of several kinds that are to be alike. */
    private void oneKind(List<String> parts, String path) {
        List<String> kinds =
                parts.stream()
                        .flatMap(id -> assembly.part(id).stream())
                        .map(p -> p.kind().word())
                        .distinct()
                        .toList();
        if (kinds.size() > 1) {
            report.problem(
                    DocumentPlaces.under(path, "parts"),
                    "a " + String.join(" and a ", kinds) + " are not alike",
                    "name parts of one kind");
        }
    }

    private List<String> named(Sharing sharing, String name, Spot spot) {
        boolean wires = SharesReader.ofWires(sharing);
        List<String> run = wiresByRun.getOrDefault(name, List.of());
        Optional<Part> part = assembly.part(name).filter(p -> !wires || isWire(p) || run.isEmpty());
        if (part.isPresent()) {
            return fits(sharing, part.get(), spot) ? List.of(name) : List.of();
        }
        if (run.isEmpty() && assembly.isComplete() && !assembly.knows(name)) {
            if (wiresByRun.containsKey(name)) {
                report.problem(spot, "\"" + name + "\" has no wire", "name another run or a part");
            } else {
                report.unknown(spot, wires ? "wire or run" : "part or run", name, names(wires));
            }
        }
        return run;
    }

    private List<String> names(boolean wires) {
        List<String> names = new ArrayList<>();
        assembly.names().stream().filter(n -> !wires || isWire(n)).forEach(names::add);
        wiresByRun.keySet().stream().filter(n -> !names.contains(n)).forEach(names::add);
        return names;
    }

    private boolean fits(Sharing sharing, Part part, Spot spot) {
        if (SharesReader.ofWires(sharing) && !isWire(part)) {
            report.problem(
                    spot, "\"" + part.id() + "\" is no wire", "name wires, links or feeds here");
            return false;
        }
        if (sharing == Sharing.FIRMWARE && !part.runsProgram()) {
            report.problem(
                    spot,
                    "\"" + part.id() + "\" runs no program",
                    "name loads, controllers, or batteries with a management");
            return false;
        }
        return true;
    }

    private static boolean isWire(Part part) {
        return part.role() == Part.Role.WIRE;
    }
}

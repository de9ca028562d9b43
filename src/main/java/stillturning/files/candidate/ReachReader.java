package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.CandidateEntry.ProcedureEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Reach;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.yaml.DocumentPlaces;

/**
 * Says from where the pilot can move each lever: as its part says, or else as its zone does. What
 * he has to move in flight and cannot, or of which nobody says that he can, is worth a second look.
 */
final class ReachReader {

    private final CandidateEntry candidate;
    private final Assembly assembly;
    private final CheckedStudy frame;
    private final ProblemCollector report;
    private final Map<String, Part> partOf = new LinkedHashMap<>();
    private final Map<String, Reach> reach = new HashMap<>();

    ReachReader(
            CandidateEntry candidate,
            Assembly assembly,
            CheckedStudy frame,
            ProblemCollector report) {
        this.candidate = candidate;
        this.assembly = assembly;
        this.frame = frame;
        this.report = report;
    }

    /** The reach by lever; what nobody says is not there. */
    Map<String, Reach> read() {
        for (Part part : assembly.parts()) {
            for (Lever lever : part.levers()) {
                partOf.put(lever.name(), part);
                said(part).ifPresent(r -> reach.put(lever.name(), r));
            }
        }
        candidate.reach().keySet().forEach(this::named);
        drill(candidate.positions().masterOff());
        candidate.procedures().forEach(this::procedure);
        unsaid();
        return reach;
    }

    private Optional<Reach> said(Part part) {
        return Optional.ofNullable(candidate.reach().get(part.id()))
                .or(() -> frame.zones().reach(part.tag().zone()));
    }

    private void named(String part) {
        Spot spot = Spot.atKey(DocumentPlaces.under("reach", part));
        Optional<Part> made = assembly.part(part);
        if (made.isEmpty() && !assembly.knows(part)) {
            report.unknown(
                    spot,
                    "part",
                    part,
                    assembly.parts().stream()
                            .filter(p -> !p.levers().isEmpty())
                            .map(Part::id)
                            .toList());
        } else if (made.filter(p -> p.levers().isEmpty()).isPresent()) {
            report.remark(spot, "nothing on \"" + part + "\" can be moved by hand");
        }
    }

    private void drill(Map<String, String> moves) {
        moves.keySet()
                .forEach(
                        lever ->
                                needed(
                                        DocumentPlaces.under("positions.master-off", lever),
                                        lever,
                                        "the drill that takes all power off"));
    }

    private void procedure(String name, ProcedureEntry entry) {
        if (entry.by().isEmpty()) {
            String path = DocumentPlaces.under(DocumentPlaces.under("procedures", name), "moves");
            entry.moves()
                    .keySet()
                    .forEach(
                            lever ->
                                    needed(
                                            DocumentPlaces.under(path, lever),
                                            lever,
                                            "the procedure"));
        }
    }

    /** A lever that has to be moved in flight. */
    private void needed(String path, String lever, String by) {
        Part part = partOf.get(lever);
        Reach from = reach.get(lever);
        if (part != null && from != null && from != Reach.SEAT) {
            report.remark(
                    Spot.atKey(path),
                    by
                            + " moves \""
                            + lever
                            + "\", which the pilot "
                            + (from == Reach.GROUND
                                    ? "reaches on the ground only"
                                    : "cannot reach without opening the aircraft")
                            + " ("
                            + part.tag().zone()
                            + "): give it another place, or do without it");
        }
    }

    /** Levers of which nobody says anything, those of one zone together. */
    private void unsaid() {
        Map<String, List<String>> byZone = new LinkedHashMap<>();
        partOf.forEach(
                (lever, part) -> {
                    if (!reach.containsKey(lever)) {
                        byZone.computeIfAbsent(part.tag().zone(), z -> new ArrayList<>())
                                .add(lever);
                    }
                });
        byZone.forEach(
                (zone, levers) ->
                        report.remark(
                                Spot.atKey(placeOf(levers)),
                                "nothing says whether the pilot can reach "
                                        + String.join(", ", levers)
                                        + " in zone "
                                        + zone
                                        + ", so no check moves "
                                        + (levers.size() == 1 ? "it" : "them")
                                        + ": write reach: seat, ground or none at the zone in"
                                        + " the study, or reach: {part: seat} here"));
    }

    private String placeOf(List<String> levers) {
        Set<String> stated = candidate.positions().flight().keySet();
        return levers.stream()
                .filter(stated::contains)
                .findFirst()
                .map(lever -> DocumentPlaces.under("positions.flight", lever))
                .orElse("positions");
    }
}

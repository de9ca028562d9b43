package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import stillturning.files.entry.SharedEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.Chances.Beta;
import stillturning.model.Chances.Shared;
import stillturning.model.Chances.Sharing;
import stillturning.yaml.DocumentPlaces;

/** Makes of what is written what parts share beside their joints. */
final class SharesReader {

    /** Finds the parts that a name stands for; tells it where there are none. */
    interface PartFinder {
        List<String> parts(Sharing sharing, String name, Spot spot);
    }

    private static final String SHARES = "shares";

    private final PartFinder finder;
    private final Beta usual;
    private final ProblemCollector report;
    private final Set<String> taken = new HashSet<>();

    /**
     * @param usual where nothing else is said
     * @param already what is shared in every candidate, whose names are taken
     */
    SharesReader(PartFinder finder, Beta usual, List<Shared> already, ProblemCollector report) {
        this.finder = finder;
        this.usual = usual;
        this.report = report;
        already.forEach(s -> taken.add(s.name()));
    }

    /** What loads share in every candidate. */
    static List<Shared> ofStudy(StudyEntry study, Beta usual, ProblemCollector report) {
        PartFinder loads =
                (sharing, name, spot) -> {
                    if (study.loads().containsKey(name)) {
                        return List.of(name);
                    }
                    report.unknown(spot, "load", name, study.loads().keySet());
                    return List.of();
                };
        for (int i = 0; i < study.shares().size(); i++) {
            SharedEntry entry = study.shares().get(i);
            if (ofWires(sharing(entry))) {
                report.problem(
                        DocumentPlaces.item(SHARES, i),
                        "the study knows no wires that share it",
                        "write it in the candidates' files");
            }
        }
        return new SharesReader(loads, usual, List.of(), report).read(study.shares());
    }

    /** Whether only wires can share it. */
    static boolean ofWires(Sharing sharing) {
        return sharing == Sharing.HOLE || sharing == Sharing.BUNDLE;
    }

    /** Everything that could be made. */
    List<Shared> read(List<SharedEntry> entries) {
        List<Shared> shared = new ArrayList<>();
        for (int i = 0; i < entries.size(); i++) {
            one(entries.get(i), DocumentPlaces.item(SHARES, i)).ifPresent(shared::add);
        }
        return List.copyOf(shared);
    }

    private Optional<Shared> one(SharedEntry entry, String path) {
        Sharing sharing = sharing(entry);
        String name = name(entry);
        if (!taken.add(name)) {
            String key = sharing.name().toLowerCase(Locale.ROOT);
            report.problem(
                    DocumentPlaces.under(path, key),
                    "something of the name \"" + name + "\" is shared already",
                    "give one of the two another name");
        }
        Set<String> parts = new LinkedHashSet<>();
        boolean all = true;
        String at = DocumentPlaces.under(path, "parts");
        for (int i = 0; i < entry.parts().size(); i++) {
            List<String> found =
                    finder.parts(
                            sharing, entry.parts().get(i), new Spot(DocumentPlaces.item(at, i), 0));
            all &= !found.isEmpty();
            parts.addAll(found);
        }
        if (all && parts.size() < 2) {
            report.problem(at, "fewer than two parts share it", "name at least two");
        }
        Optional<Beta> beta =
                sharing.goesByBeta()
                        ? Optional.of(entry.beta().map(ChancesReader::beta).orElse(usual))
                        : Optional.empty();
        return parts.size() < 2
                ? Optional.empty()
                : Optional.of(new Shared(sharing, name, List.copyOf(parts), beta));
    }

    private static Sharing sharing(SharedEntry entry) {
        if (entry.hole().isPresent()) {
            return Sharing.HOLE;
        }
        if (entry.bundle().isPresent()) {
            return Sharing.BUNDLE;
        }
        if (entry.mount().isPresent()) {
            return Sharing.MOUNT;
        }
        return entry.firmware().isPresent() ? Sharing.FIRMWARE : Sharing.ALIKE;
    }

    private static String name(SharedEntry entry) {
        return entry.hole()
                .or(entry::bundle)
                .or(entry::mount)
                .or(entry::firmware)
                .or(entry::alike)
                .orElseThrow();
    }
}

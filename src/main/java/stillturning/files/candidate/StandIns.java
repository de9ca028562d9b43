package stillturning.files.candidate;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.PartEntry;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.yaml.YamlDocument;

/**
 * Entries in the place of those that cannot be made a part, so that the part can be drawn. Their
 * values say nothing of the part and are never shown.
 */
public final class StandIns {

    /** What not even the catalogue knows. */
    private static final Map<PartKind, PartEntry> REST = rest();

    private final Catalogue catalogue;

    public StandIns(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    private static Map<PartKind, PartEntry> rest() {
        Map<PartKind, PartEntry> rest = new HashMap<>();
        for (PartKind kind : PartKinds.all()) {
            Map<String, String> examples = PartEntry.examples(kind);
            if (!examples.isEmpty()) {
                StringBuilder text = new StringBuilder("is: " + kind.word() + "\n");
                examples.forEach((key, value) -> text.append(key + ": " + value + "\n"));
                rest.put(
                        kind,
                        FileNotations.binder()
                                .bind(
                                        YamlDocument.of(Path.of("stand-in"), text.toString()),
                                        PartEntry.class)
                                .value()
                                .orElseThrow());
            }
        }
        return rest;
    }

    /** The entry with everything that it leaves open, whatever class it names. */
    public PartEntry completed(PartEntry entry) {
        PartEntry usual = first(entry.kind());
        PartEntry filled = entry.filledFrom(usual);
        return Optional.ofNullable(REST.get(entry.kind())).map(filled::filledFrom).orElse(filled);
    }

    /** The usual entry of the same kind, without a value of the entry's own. */
    PartEntry usual(PartEntry entry) {
        PartEntry usual = first(entry.kind());
        return Optional.ofNullable(REST.get(entry.kind())).map(usual::filledFrom).orElse(usual);
    }

    private PartEntry first(PartKind kind) {
        return catalogue.classesOf(kind.word()).values().iterator().next();
    }
}

package stillturning.files;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.Values;
import stillturning.yaml.YamlDocument;

/**
 * Entries in the place of those that cannot be made a part, so that the part can be drawn. Their
 * values say nothing of the part and are never shown.
 */
final class StandIns {

    /** What not even the catalogue knows. */
    private static final Map<String, PartEntry> REST = new HashMap<>();

    static {
        rest("{is: fuse, rating: 1 A}");
        rest("{is: breaker, rating: 1 A}");
        rest("{is: controller, channels: [1 A]}");
        rest("{is: wire, gauge: AWG 22, length: 1 m}");
    }

    private final Catalogue catalogue;

    StandIns(Catalogue catalogue) {
        this.catalogue = catalogue;
    }

    private static void rest(String text) {
        PartEntry entry =
                FileNotations.binder()
                        .bind(YamlDocument.of(Path.of("stand-in"), text), PartEntry.class)
                        .value()
                        .orElseThrow();
        REST.put(Catalogue.kindOf(entry), entry);
    }

    /** The entry with everything that it leaves open, whatever class it names. */
    PartEntry completed(PartEntry entry) {
        String kind = Catalogue.kindOf(entry);
        PartEntry usual = catalogue.classesOf(kind).values().iterator().next();
        PartEntry filled = Values.filled(entry, usual);
        return Optional.ofNullable(REST.get(kind))
                .map(r -> Values.filled(filled, r))
                .orElse(filled);
    }

    /** The usual entry of the same kind, without a value of the entry's own. */
    PartEntry usual(PartEntry entry) {
        String kind = Catalogue.kindOf(entry);
        PartEntry usual = catalogue.classesOf(kind).values().iterator().next();
        return Optional.ofNullable(REST.get(kind)).map(r -> Values.filled(usual, r)).orElse(usual);
    }
}

package stillturning.desktop.viewmodel.draw;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import stillturning.files.PartCatalogue;
import stillturning.files.PartCatalogue.CatalogueKind;
import stillturning.files.PartCatalogue.PartClass;

/**
 * Something that can be added to a candidate.
 *
 * @param kind the kind's word in the files
 * @param ofClass the class in the catalogue
 * @param words what it is
 * @param values what the class says of it, one a line
 */
public record PaletteEntry(String kind, String ofClass, String words, List<String> values) {
    public PaletteEntry {
        values = List.copyOf(values);
    }

    /** Everything that the catalogue offers. */
    static List<PaletteEntry> all() {
        return PartCatalogue.shipped().kinds().stream()
                .flatMap(kind -> kind.classes().stream().map(c -> of(kind, c)))
                .toList();
    }

    private static PaletteEntry of(CatalogueKind kind, PartClass of) {
        return new PaletteEntry(
                kind.word(),
                of.name(),
                kind.words(),
                of.values().stream().map(v -> v.key() + " " + v.text()).toList());
    }

    /** What a person calls it: {@code battery, lifepo4}; the class only where there are several. */
    public String name() {
        String spoken = kind.replace('-', ' ');
        boolean several =
                PartCatalogue.shipped().kind(kind).filter(k -> k.classes().size() > 1).isPresent();
        return several ? spoken + ", " + ofClass.replace('-', ' ') : spoken;
    }

    /** A text that stands for it while it is carried to the paper. */
    public String carried() {
        return kind + " " + ofClass;
    }

    /** What a text stands for that was carried to the paper. */
    public static Optional<PaletteEntry> carried(String text) {
        return all().stream().filter(e -> e.carried().equals(text)).findFirst();
    }

    boolean answers(String search) {
        String all = (name() + " " + words).toLowerCase(Locale.ROOT);
        return List.of(search.toLowerCase(Locale.ROOT).strip().split("\\s+")).stream()
                .allMatch(all::contains);
    }
}

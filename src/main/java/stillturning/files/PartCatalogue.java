package stillturning.files;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.candidate.StandIns;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.CatalogueEntry;
import stillturning.files.entry.FileNotations;
import stillturning.files.entry.Names;
import stillturning.files.entry.PartEntry;
import stillturning.parts.Lever;
import stillturning.parts.Part;
import stillturning.parts.PartValues;
import stillturning.parts.Tag;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.shape.Form;
import stillturning.yaml.shape.FormField;
import stillturning.yaml.shape.Forms;

/** What can be added to a candidate: the kinds of parts, their classes, and each class's values. */
public final class PartCatalogue {

    private static final double SAMPLE_VOLTS = 14;

    private static final PartCatalogue SHIPPED = new PartCatalogue();

    /**
     * A kind of part.
     *
     * @param word its word in the files
     * @param words what it is
     * @param classes its classes, the usual one first
     */
    public record CatalogueKind(String word, String words, List<PartClass> classes) {
        public CatalogueKind {
            classes = List.copyOf(classes);
        }

        /** The word as people say it. */
        public String spoken() {
            return Names.spoken(word);
        }

        /** The class of this name. */
        public Optional<PartClass> ofClass(String name) {
            return classes.stream().filter(c -> c.name().equals(name)).findFirst();
        }
    }

    /** A class of a kind, with everything that it says of a part. */
    public record PartClass(String name, List<CatalogueValue> values) {
        public PartClass {
            values = List.copyOf(values);
        }
    }

    /**
     * A value that a class gives to a part.
     *
     * @param text with its unit and where it comes from
     */
    public record CatalogueValue(String key, String text) {}

    private final YamlDocument document = Catalogue.document();
    private final Forms forms = new Forms(FileNotations.binder(), CatalogueEntry.class);
    private final List<CatalogueKind> kinds =
            Catalogue.shipped().kinds().stream().map(this::kindCalled).toList();

    private PartCatalogue() {}

    /** The catalogue of this program. */
    public static PartCatalogue shipped() {
        return SHIPPED;
    }

    /** Every kind, in the order of the catalogue. */
    public List<CatalogueKind> kinds() {
        return kinds;
    }

    /** The kind of this word. */
    public Optional<CatalogueKind> kind(String word) {
        return kinds.stream().filter(k -> k.word().equals(word)).findFirst();
    }

    /**
     * A part of a class, whatever the class leaves open being an example: for what does not hang on
     * that, such as where its levers can stand.
     */
    public Part sample(PartEntry entry) {
        Tag tag = new Tag(entry.kind().word(), entry.kind().name(), "", Tag.Burden.NONE);
        return new StandIns(Catalogue.shipped())
                .completed(entry)
                .complete()
                .part(tag, new PartValues.PartSurroundings(SAMPLE_VOLTS, List.of()));
    }

    /** Whether a line that starts at a part of this kind is protected by it. */
    public boolean protects(String word) {
        return usual(word).stream()
                .anyMatch(p -> p.terminals().stream().anyMatch(t -> p.protection(t).isPresent()));
    }

    /** Where a run starts that names nothing but a part of this kind, with one way through it. */
    public Optional<String> exitOf(String word) {
        return usual(word).filter(PartCatalogue::hasOneWay).map(Part::exit);
    }

    /** Where a run ends that names nothing but a part of this kind, with one way through it. */
    public Optional<String> entryOf(String word) {
        return usual(word).filter(PartCatalogue::hasOneWay).map(Part::entry);
    }

    /** What a pilot moves by hand may have several ways in another class. */
    private static boolean hasOneWay(Part part) {
        return part.across(part.entry()).filter(part.exit()::equals).isPresent()
                && part.wayHint().isEmpty()
                && part.levers().stream().noneMatch(Lever::stated);
    }

    private Optional<Part> usual(String word) {
        return kind(word).stream()
                .flatMap(kind -> Catalogue.shipped().classesOf(kind.word()).values().stream())
                .findFirst()
                .map(this::sample);
    }

    /** Where the lever of a new part stands in flight; empty where nothing has to be said of it. */
    public Optional<String> positionInFlight(PartEntry entry) {
        return sample(entry).levers().stream().filter(Lever::stated).map(Lever::usual).findFirst();
    }

    /** A sample of every class. */
    public List<Part> samples() {
        return kinds.stream()
                .flatMap(kind -> Catalogue.shipped().classesOf(kind.word()).values().stream())
                .map(this::sample)
                .toList();
    }

    private CatalogueKind kindCalled(String word) {
        List<PartClass> classes =
                Catalogue.shipped().classesOf(word).keySet().stream()
                        .map(name -> new PartClass(name, values(word, name)))
                        .toList();
        return new CatalogueKind(
                word, form(List.of("classes", word, classes.get(0).name())).words(), classes);
    }

    private List<CatalogueValue> values(String kind, String name) {
        return form(List.of("classes", kind, name)).fields().stream()
                .flatMap(f -> f.text().map(text -> new CatalogueValue(f.key(), text)).stream())
                .toList();
    }

    private Form form(List<String> keys) {
        return forms.at(document, keys)
                .orElseThrow(() -> new IllegalStateException("no form for " + keys));
    }

    /** What a class gives to a field of a part or of something inside it. */
    Optional<String> given(String kind, String ofClass, List<String> keys, String key) {
        List<String> all = new ArrayList<>(List.of("classes", kind, ofClass));
        all.addAll(keys);
        return forms.at(document, all).flatMap(f -> f.field(key)).flatMap(FormField::text);
    }
}

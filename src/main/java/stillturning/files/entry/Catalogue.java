package stillturning.files.entry;

import static java.util.Objects.requireNonNull;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.CatalogueEntry.CableEntry;
import stillturning.parts.CableCost;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Source;

/** The generic classes of parts that ship with the program. */
public final class Catalogue {

    private static final String FILE = "catalogue.yaml";
    private static final Catalogue SHIPPED =
            new Catalogue(Shipped.read(FILE, CatalogueEntry.class));

    private final CatalogueEntry entry;

    private Catalogue(CatalogueEntry entry) {
        this.entry = entry;
    }

    /** The catalogue's file, as people read it. */
    public static YamlDocument document() {
        return Shipped.document(FILE);
    }

    /** The catalogue of this program. */
    public static Catalogue shipped() {
        return SHIPPED;
    }

    /**
     * The same with other usual classes.
     *
     * @param usual name of a class by its kind's word, both known
     */
    public Catalogue withUsual(Map<String, String> usual) {
        Map<String, Map<String, PartEntry>> classes = new LinkedHashMap<>(entry.classes());
        usual.forEach((kind, name) -> classes.computeIfPresent(kind, (k, of) -> first(name, of)));
        return new Catalogue(new CatalogueEntry(classes, entry.cable()));
    }

    private static Map<String, PartEntry> first(String name, Map<String, PartEntry> of) {
        Map<String, PartEntry> reordered = new LinkedHashMap<>();
        reordered.put(name, requireNonNull(of.get(name), name));
        reordered.putAll(of);
        return reordered;
    }

    /** The class of a part that names none. */
    public String usualClassOf(String kind) {
        return classesOf(kind).keySet().iterator().next();
    }

    /** Words of all kinds, in the order of the catalogue. */
    public List<String> kinds() {
        return List.copyOf(entry.classes().keySet());
    }

    /** Classes of a kind, the usual one first. */
    public Map<String, PartEntry> classesOf(String kind) {
        return requireNonNull(entry.classes().get(kind), kind);
    }

    /** What a wire costs beside its copper and insulation. */
    public CableCost cable() {
        CableEntry cable = entry.cable();
        return new CableCost(
                cable.terminalMass().quantity().si(),
                cable.terminalPrice().amount(),
                cable.pricePerMetre().amount(),
                cable.pricePerMetreAndMm2().amount());
    }

    /** The part with everything that it leaves open; absent if there is no such class. */
    public Optional<PartEntry> completed(PartEntry part) {
        String kind = part.kind().word();
        Map<String, PartEntry> classes = classesOf(kind);
        String name = part.ofClass().orElseGet(() -> usualClassOf(kind));
        return Optional.ofNullable(classes.get(name))
                .map(c -> c.sizedAs(part).mapped("", new FromClass(kind, name)))
                .map(part::filledFrom);
    }

    /** Marks a class's values as coming from the catalogue, and keeps what it says of them. */
    private record FromClass(String kind, String name) implements Values.ValueReplacement {
        @Override
        public Given given(String path, Given value) {
            return new Given(
                    value.quantity(),
                    value.spread(),
                    Origin.CATALOGUE,
                    note(value.origin(), value.note()));
        }

        @Override
        public Price price(String path, Price value) {
            Source source = value.source();
            return new Price(
                    value.amount(),
                    value.currency(),
                    new Source(Origin.CATALOGUE, note(source.origin(), source.note())));
        }

        private String note(Origin origin, String said) {
            String of = kind + " " + name + ": " + origin.words();
            return said.isEmpty() ? of : of + ", " + said;
        }
    }
}

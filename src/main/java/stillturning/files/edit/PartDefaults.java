package stillturning.files.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.PartCatalogue;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.Price;
import stillturning.files.entry.Values;
import stillturning.quantity.Quantity;
import stillturning.yaml.YamlValue;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;

/** What a new part needs written down beside its class, so that it can be read at once. */
public final class PartDefaults {

    private PartDefaults() {}

    /**
     * The fields of a new part.
     *
     * @param settings what is known of it, by key; the rest is filled in where the class leaves it
     *     open, and where the aircraft has twice the catalogue's voltage
     * @throws ChangeRefused if there is no such kind or class
     */
    public static YamlValue.Fields fields(
            String kind,
            Optional<String> ofClass,
            String zone,
            Map<String, String> settings,
            boolean twice)
            throws ChangeRefused {
        PartEntry entry = entry(kind, ofClass);
        Map<String, YamlValue> fields = new LinkedHashMap<>();
        fields.put("is", YamlValue.text(kind));
        ofClass.ifPresent(c -> fields.put("class", YamlValue.text(c)));
        fields.put("zone", YamlValue.text(zone));
        PartEntry.examples(entry.kind()).forEach((key, text) -> fields.put(key, value(text)));
        if (twice) {
            doubled(entry).forEach((key, text) -> fields.put(key, YamlValue.text(text)));
        }
        settings.forEach((key, text) -> fields.put(key, YamlValue.text(text)));
        List<YamlValue.Field> all = new ArrayList<>();
        fields.forEach((key, value) -> all.add(new YamlValue.Field(key, value)));
        return new YamlValue.Fields(all);
    }

    private static PartEntry entry(String kind, Optional<String> ofClass) throws ChangeRefused {
        if (!Catalogue.shipped().kinds().contains(kind)) {
            throw new ChangeRefused(
                    "the catalogue knows no kind of part \""
                            + kind
                            + "\"; take one of "
                            + String.join(", ", Catalogue.shipped().kinds()));
        }
        Map<String, PartEntry> classes = Catalogue.shipped().classesOf(kind);
        if (ofClass.isPresent() && !classes.containsKey(ofClass.get())) {
            throw new ChangeRefused(
                    "the catalogue has no "
                            + kind
                            + " class \""
                            + ofClass.get()
                            + "\"; take one of "
                            + String.join(", ", classes.keySet()));
        }
        return ofClass.map(classes::get).orElseGet(() -> classes.values().iterator().next());
    }

    /** Where a new part's lever stands in flight; absent where nothing has to be said of it. */
    public static Optional<String> position(String kind, Optional<String> ofClass)
            throws ChangeRefused {
        return PartCatalogue.shipped().positionInFlight(entry(kind, ofClass));
    }

    /** A list in brackets, or a text. */
    private static YamlValue value(String text) {
        return text.startsWith("[")
                ? YamlValue.texts(text.substring(1, text.length() - 1).split(", "))
                : YamlValue.text(text);
    }

    /** The class's voltages twice as high, and what must stay in step with them. */
    private static Map<String, String> doubled(PartEntry entry) {
        Map<String, String> doubled = new LinkedHashMap<>();
        Map<String, Integer> powers = PartEntry.powersOfVolts(entry.kind());
        Values.mapped(
                entry,
                "",
                new Values.ValueReplacement() {
                    @Override
                    public Given given(String path, Given value) {
                        Integer power = powers.get(path);
                        if (power != null) {
                            double factor = Math.pow(2, power);
                            Quantity quantity =
                                    Quantity.of(
                                            value.quantity().si() * factor,
                                            value.quantity().dimension());
                            doubled.put(path, new Given(quantity, Origin.GUESSED, "").written());
                        }
                        return value;
                    }

                    @Override
                    public Price price(String path, Price value) {
                        return value;
                    }
                });
        return doubled;
    }
}

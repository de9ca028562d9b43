package stillturning.dossier.record;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.edit.FileEdits;
import stillturning.files.value.Assumption;
import stillturning.quantity.Dimension;
import stillturning.quantity.Formats;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.quantity.Spread;
import stillturning.reliability.asbuilt.Compared;
import stillturning.report.record.FormLine;
import stillturning.report.record.ValueOffer;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.YamlValue;
import stillturning.yaml.notation.Origin;
import stillturning.yaml.notation.Source;

/** Values of the study that could be replaced by measured ones, and the files with them in. */
public final class ValueOffers {

    private static final String STUDY_FILE = "study.yaml";

    private final ReadStudy read;
    private final String file;
    private final Source source;
    private final List<ValueOffer> offers = new ArrayList<>();

    private ValueOffers(ReadStudy read, String candidate, String date) {
        this.read = read;
        this.file = candidate + ".yaml";
        this.source = new Source(Origin.MEASURED, date);
    }

    /** The offers that follow from what was measured. */
    static List<ValueOffer> of(
            ReadStudy read, String candidate, String date, List<FormLine> lines) {
        ValueOffers offers = new ValueOffers(read, candidate, date);
        Map<String, Double> healths = new LinkedHashMap<>();
        for (FormLine line : lines) {
            Compared compared = line.compared();
            compared.measured().ifPresent(value -> offers.offer(compared, value, healths));
        }
        return offers.offers.stream().filter(ValueOffer::changes).toList();
    }

    private void offer(Compared compared, double value, Map<String, Double> healths) {
        String at = compared.expectation().subject().at();
        switch (compared.expectation().subject().kind()) {
            case CAPACITY -> healths.put(at, capacity(at, compared, value));
            case BATTERY_OHMS ->
                    put(
                            file,
                            "parts." + at,
                            "resistance",
                            ohms(
                                    value * healths.getOrDefault(at, health(at)),
                                    compared.half(),
                                    value));
            case LOAD_AMPS ->
                    put(STUDY_FILE, "loads." + at, "draws", Formats.significant(value, 3) + " A");
            case PATH_OHMS -> path(at, compared, value);
            case HAPPENED, VOLTS, AMPS, OUT_SECONDS -> {}
        }
    }

    /** Where the file gives a resistance of its own to what it is. */
    private void path(String at, Compared compared, double value) {
        if (assumption(file, "parts." + at + ".resistance").isPresent()) {
            put(file, "parts." + at, "resistance", ohms(value, compared.half(), value));
        }
    }

    /** The health that a battery then has. */
    private double capacity(String at, Compared compared, double coulombs) {
        double aged = compared.expectation().predicted();
        double rated = aged / health(at);
        double health = coulombs / rated;
        String mapping = "parts." + at;
        if (health <= 1) {
            put(file, mapping, "health", percent(health, compared.half(), rated));
            return Math.round(1000 * health) / 1000.0;
        }
        String half =
                compared.half().isPresent()
                        ? " ±" + Formats.fixed(compared.half().getAsDouble() / 3600, 2) + " Ah"
                        : "";
        put(file, mapping, "capacity", Formats.fixed(coulombs / 3600, 2) + " Ah" + half);
        put(file, mapping, "health", "100 %");
        return 1;
    }

    private static String percent(double share, OptionalDouble half, double rated) {
        String value = Formats.fixed(100 * share, 1) + " %";
        String spread = half.isPresent() ? Formats.fixed(100 * half.getAsDouble() / rated, 1) : "";
        return spread.isEmpty() || spread.equals("0.0") ? value : value + " ±" + spread + " %";
    }

    private static String ohms(double ohms, OptionalDouble half, double measured) {
        String value = Formats.significant(1000 * ohms, 3) + " mohm";
        return half.isPresent() && half.getAsDouble() > 0
                ? value
                        + " ±"
                        + Formats.significant(1000 * half.getAsDouble() * ohms / measured, 2)
                        + " mohm"
                : value;
    }

    /** Share of its capacity that age has left a battery, as the study has it. */
    private double health(String battery) {
        return assumption(file, "parts." + battery + ".health")
                .map(Assumption::text)
                .map(text -> Spread.SIGN.split(text, 2)[0].strip())
                .map(ValueOffers::ratio)
                .orElse(1.0);
    }

    private static double ratio(String text) {
        try {
            return Quantity.parse(text, Dimension.RATIO).si();
        } catch (MalformedQuantity impossible) {
            throw new IllegalStateException("a health was read as " + text, impossible);
        }
    }

    private Optional<Assumption> assumption(String in, String path) {
        return read.assumptions().stream()
                .filter(a -> a.file().equals(in) && a.path().equals(path))
                .findFirst();
    }

    private void put(String in, String mapping, String key, String value) {
        String before =
                assumption(in, mapping + "." + key)
                        .map(a -> new Source(a.origin(), a.note()).after(a.text()))
                        .orElse("");
        offers.add(new ValueOffer(in, mapping, key, before, source.after(value)));
    }

    /**
     * The study's files with these values in the place of theirs, everything else as it is; nothing
     * is written.
     *
     * @throws ChangeRefused if a file is written in a way that forbids it
     */
    public static List<YamlDocument> taken(StudyReader reader, List<ValueOffer> offers)
            throws ChangeRefused {
        Map<String, FileEdits> edits = new LinkedHashMap<>();
        for (ValueOffer offer : offers) {
            FileEdits of = edits.get(offer.file());
            if (of == null) {
                of = new FileEdits(offer.file(), document(reader, offer.file()));
                edits.put(offer.file(), of);
            }
            of.put(offer.mapping(), offer.key(), YamlValue.text(offer.after()));
        }
        return edits.values().stream().map(FileEdits::document).toList();
    }

    private static YamlDocument document(StudyReader reader, String file) {
        return reader.documents().stream()
                .filter(d -> String.valueOf(d.file().getFileName()).equals(file))
                .findFirst()
                .orElseThrow();
    }
}

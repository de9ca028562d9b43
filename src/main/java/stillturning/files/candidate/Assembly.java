package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.Names;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.Price;
import stillturning.files.entry.Values;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.files.value.ValueLog;
import stillturning.files.value.Variation;
import stillturning.model.Join;
import stillturning.model.Terminal;
import stillturning.parts.Part;
import stillturning.parts.PartValues;
import stillturning.parts.Tag;
import stillturning.yaml.DocumentPlaces;
import stillturning.yaml.notation.Given;

/** A candidate under construction: its parts so far, how they are joined, and who asked for it. */
final class Assembly {

    /** A join and the line that made it. */
    record Joined(Join join, Spot spot) {}

    private final Catalogue catalogue;
    private final double nominalVolts;
    private final ProblemCollector report;
    private final ValueLog ledger;
    private final Map<String, Part> parts = new LinkedHashMap<>();
    private final Map<String, Spot> spots = new LinkedHashMap<>();
    private final Set<String> brokenRuns = new HashSet<>();
    private final Map<String, Double> contactAmps = new LinkedHashMap<>();
    private final Map<String, Double> interruptAmps = new LinkedHashMap<>();
    private final Optional<StandIns> standIns;
    private final Map<String, String> protectorsOfUsualClass = new LinkedHashMap<>();
    private final Set<String> stoodFor = new LinkedHashSet<>();
    private final List<Joined> joins = new ArrayList<>();
    private final Set<Terminal> joined = new HashSet<>();

    Assembly(Catalogue catalogue, double nominalVolts, ProblemCollector report, ValueLog ledger) {
        this(catalogue, nominalVolts, report, ledger, Optional.empty());
    }

    private Assembly(
            Catalogue catalogue,
            double nominalVolts,
            ProblemCollector report,
            ValueLog ledger,
            Optional<StandIns> standIns) {
        this.standIns = standIns;
        this.catalogue = catalogue;
        this.nominalVolts = nominalVolts;
        this.report = report;
        this.ledger = ledger;
    }

    /** One in which something stands for every part that cannot be made, to be drawn. */
    static Assembly forDrawing(Catalogue catalogue, double nominalVolts, ProblemCollector report) {
        return new Assembly(
                catalogue,
                nominalVolts,
                report,
                new ValueLog("", Variation.NONE),
                Optional.of(new StandIns(catalogue)));
    }

    /** Whether it is there to be drawn, with something in the place of what cannot be made. */
    boolean isForDrawing() {
        return standIns.isPresent();
    }

    /** Parts whose values are not their own. */
    Set<String> stoodFor() {
        return Collections.unmodifiableSet(stoodFor);
    }

    List<Part> parts() {
        return List.copyOf(parts.values());
    }

    List<Joined> joins() {
        return joins;
    }

    /** The part of this name, if it could be made. */
    Optional<Part> part(String id) {
        return Optional.ofNullable(parts.get(id));
    }

    /** Whether a part of this name was asked for, made or not. */
    boolean knows(String id) {
        return spots.containsKey(id)
                || IntStream.range(0, id.length())
                        .filter(i -> id.charAt(i) == '-')
                        .anyMatch(i -> brokenRuns.contains(id.substring(0, i)));
    }

    /** Whether every run could be built. */
    boolean isComplete() {
        return brokenRuns.isEmpty();
    }

    /** Remembers a run that could not be built, so that nobody misses its parts. */
    void breakRun(String prefix) {
        brokenRuns.add(prefix);
    }

    Set<String> names() {
        return Collections.unmodifiableSet(spots.keySet());
    }

    /** The line that asked for a part. */
    Spot spotOf(String id) {
        return spots.getOrDefault(id, Spot.atKey("parts"));
    }

    /** What contacts are rated for (A), by part. */
    Map<String, Double> contactAmps() {
        return contactAmps;
    }

    /** Largest current that protectors interrupt (A), by part. */
    Map<String, Double> interruptAmps() {
        return interruptAmps;
    }

    /** Class that was taken for protectors that name none, by kind, where there are several. */
    Map<String, String> protectorsOfUsualClass() {
        return protectorsOfUsualClass;
    }

    /** Where each part is asked for. */
    Map<String, PartPlace> places() {
        Map<String, PartPlace> places = new LinkedHashMap<>();
        spots.forEach((id, spot) -> places.put(id, report.place(spot)));
        return places;
    }

    /** Whether anything is joined to a terminal so far. */
    boolean isJoined(Terminal terminal) {
        return joined.contains(terminal);
    }

    void join(Terminal one, Terminal other, Spot spot) {
        joins.add(new Joined(new Join(one, other), spot));
        joined.add(one);
        joined.add(other);
    }

    /** Takes a part that is made already. */
    void add(Part part, Spot spot) {
        if (claim(part.id(), spot)) {
            parts.put(part.id(), part);
        }
    }

    /** Reserves a name; false if it is taken, which is told. */
    boolean claim(String id, Spot spot) {
        Spot before = spots.putIfAbsent(id, spot);
        if (before != null) {
            report.problem(
                    spot,
                    "a part \"" + id + "\" is already there, from " + before.path(),
                    "give one of the two another name");
        }
        return before == null;
    }

    /** The entry with its catalogue class filled in and its values written down. */
    Optional<PartEntry> complete(String id, PartEntry entry, Spot spot) {
        Optional<PartEntry> filled = catalogue.completed(entry);
        if (filled.isEmpty() && standIns.isPresent()) {
            stoodFor.add(id);
            return Optional.of(standIns.get().completed(entry));
        }
        if (filled.isEmpty()) {
            String kind = entry.kind().word();
            report.unknown(
                    spot,
                    kind + " class",
                    entry.ofClass().orElse(""),
                    catalogue.classesOf(kind).keySet());
        }
        return filled.map(f -> Values.mapped(f, pathOf(id), ledger));
    }

    static String pathOf(String id) {
        return DocumentPlaces.under("parts", id);
    }

    /** Makes a complete entry a part, under a name that was claimed. */
    void make(String id, PartEntry entry, String zone, List<String> studs) {
        Spot spot = spotOf(id);
        if (standIns.isPresent()) {
            draw(id, entry, zone, studs);
            return;
        }
        for (String key : entry.open()) {
            report.problem(
                    spot,
                    "the " + entry.kind().word() + " has no \"" + key + "\"",
                    "add it, since the catalogue does not know it");
        }
        if (!entry.open().isEmpty()) {
            return;
        }
        try {
            PartValues values = entry.complete();
            parts.put(id, part(id, entry, values, zone, studs));
            values.contactAmps().ifPresent(amps -> contactAmps.put(id, amps));
            values.interruptAmps().ifPresent(amps -> interruptAmps.put(id, amps));
            noteClass(entry, values);
        } catch (IllegalArgumentException refused) {
            report.problem(
                    spot, String.valueOf(refused.getMessage()), "correct the values of this part");
        }
    }

    /** No number shows which class a protector is of, and its class says when it opens. */
    private void noteClass(PartEntry entry, PartValues values) {
        String kind = entry.kind().word();
        if (values.protection().isPresent()
                && entry.ofClass().isEmpty()
                && catalogue.classesOf(kind).size() > 1) {
            protectorsOfUsualClass.put(kind, catalogue.usualClassOf(kind));
        }
    }

    private Part part(
            String id, PartEntry entry, PartValues values, String zone, List<String> arrivals) {
        String label = entry.said().label().orElseGet(() -> Names.spoken(id));
        Tag tag = new Tag(id, label, zone, burden(entry, values));
        Part part = values.part(tag, new PartValues.PartSurroundings(nominalVolts, arrivals));
        part.elements(); // some values are first looked at there
        return part;
    }

    private Tag.Burden burden(PartEntry entry, PartValues values) {
        Tag.Burden computed = values.burden(catalogue.cable()).orElse(Tag.Burden.NONE);
        return new Tag.Burden(
                entry.said().mass().map(m -> m.quantity().si()).orElse(computed.kilograms()),
                entry.said().price().map(Price::amount).orElse(computed.price()));
    }

    private void draw(String id, PartEntry entry, String zone, List<String> studs) {
        StandIns standing = standIns.orElseThrow();
        PartEntry whole = standing.completed(entry);
        if (!entry.open().isEmpty()) {
            stoodFor.add(id);
        }
        try {
            parts.put(id, part(id, whole, whole.complete(), zone, studs));
        } catch (IllegalArgumentException refused) {
            stoodFor.add(id);
            PartEntry usual = standing.usual(entry);
            parts.put(id, part(id, usual, usual.complete(), zone, studs));
        }
    }

    /** The values that a part was made of, for showing. */
    static List<String> valuesOf(PartEntry entry) {
        List<String> values = new ArrayList<>();
        Values.mapped(
                entry,
                "",
                new Values.ValueReplacement() {
                    @Override
                    public Given given(String path, Given value) {
                        values.add(path + " " + value.written());
                        return value;
                    }

                    @Override
                    public Price price(String path, Price value) {
                        values.add(path + " " + value.written());
                        return value;
                    }
                });
        return values;
    }
}

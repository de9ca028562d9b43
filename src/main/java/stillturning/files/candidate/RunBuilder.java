package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import stillturning.files.candidate.CheckedStudy.Zones;
import stillturning.files.candidate.Terminals.InlineWay;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.RunText.NewProtector;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.entry.RunText.RunItem;
import stillturning.files.entry.RunText.Through;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.files.value.ValueLog;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import stillturning.quantity.Dimension;
import stillturning.quantity.Quantity;
import stillturning.quantity.WireGauge;
import stillturning.yaml.notation.Given;
import stillturning.yaml.notation.Origin;

/** Makes one run's parts and joins: what a sketch line stands for. */
final class RunBuilder {

    /** What is common to all runs of a candidate. */
    record RunContext(
            Assembly assembly,
            Terminals terminals,
            Placement placement,
            CheckedStudy frame,
            ProblemCollector report,
            ValueLog ledger) {}

    /**
     * A run whose ends are found.
     *
     * @param path where it is written
     * @param prefix what the names of its new parts start with
     */
    record PlannedRun(String path, String prefix, Terminal from, Terminal to, List<RunItem> items) {
        Spot spot(RunItem item) {
            return new Spot(path, item.offset());
        }
    }

    /**
     * What a run's wires are for.
     *
     * @param wireName what they are called
     * @param amps current that they carry for long (A), if known
     * @param backMetres length of the way back to the source (m), where the drop counts
     * @param gauge their gauge where none is written; worked out if empty
     */
    record WireUse(
            String wireName,
            Optional<Double> amps,
            Optional<Double> backMetres,
            Optional<WireGauge> gauge) {}

    /**
     * Something that lies in a run.
     *
     * @param item what it is made from, if the run makes it
     */
    record Stop(Terminal in, Terminal out, String zone, Optional<RunItem> item) {

        String id() {
            return in.part();
        }
    }

    private final RunContext site;
    private final PlannedRun line;
    private final WireUse use;
    private final Map<String, Integer> counts = new HashMap<>();
    private final Map<String, PartEntry> entries = new HashMap<>();
    private final List<LaidPart> laid = new ArrayList<>();

    RunBuilder(RunContext site, PlannedRun line, WireUse use) {
        this.site = site;
        this.line = line;
        this.use = use;
    }

    /**
     * What came of a run.
     *
     * @param gauges gauge of each of its wires
     */
    record Result(List<LaidPart> laid, List<WireGauge> gauges) {}

    /**
     * A part that a run made.
     *
     * @param openGauge whether it is a wire whose gauge is not written
     */
    record LaidPart(String id, PartEntry entry, String zone, boolean openGauge) {

        /** The same of another size. */
        LaidPart of(Cable size) {
            return new LaidPart(id, ofGauge(entry, CableSizes.gauge(size)), zone, openGauge);
        }

        /** As it is shown. */
        Expanded.ExpandedPart shown() {
            List<String> values = new ArrayList<>();
            gaugeOf(entry)
                    .ifPresent(
                            gauge ->
                                    values.add(
                                            "gauge "
                                                    + gauge.name()
                                                    + (openGauge ? " (automatic)" : "")));
            values.addAll(Assembly.valuesOf(entry));
            return new Expanded.ExpandedPart(id, entry.kind().word(), values);
        }
    }

    /** Builds the run; absent after at least one problem was told. */
    Optional<Result> build() {
        Optional<Result> result = built();
        if (result.isEmpty()) {
            site.assembly.breakRun(line.prefix);
            if (site.assembly.isForDrawing()) {
                joinBare();
            }
        }
        return result;
    }

    /** What can be drawn of a run that cannot be built: its ends, what lies in it, no wires. */
    private void joinBare() {
        counts.clear();
        Spot at = new Spot(line.path, 0);
        Terminal before = line.from;
        for (RunItem item : line.items) {
            Optional<InlineWay> way = bareWay(item, before);
            if (way.isPresent()) {
                if (!before.equals(way.get().in())) {
                    site.assembly.join(before, way.get().in(), at);
                }
                before = way.get().out();
            }
        }
        site.assembly.join(before, line.to, at);
    }

    private Optional<InlineWay> bareWay(RunItem item, Terminal before) {
        if (item.leadsThrough().isPresent()) {
            return site.terminals.through(item.leadsThrough().get(), before, line.path);
        }
        if (item instanceof NewProtector protector) {
            Stop stop = created(item, "");
            Optional<PartEntry> complete =
                    site.assembly.complete(stop.id(), entry(protector), line.spot(item));
            complete.ifPresent(e -> site.assembly.make(stop.id(), e, "", List.of()));
            return Optional.of(new InlineWay(stop.in(), stop.out()));
        }
        return Optional.empty();
    }

    private Optional<Result> built() {
        Optional<List<Stop>> found = stops();
        if (found.isEmpty() || !claim(found.get())) {
            return Optional.empty();
        }
        List<Stop> stops = found.get();
        RunGauges gauges = new RunGauges(site, line, use, stops, entries);
        if (!completeProtectors(stops) || !measureWires(stops) || !gauges.choose()) {
            return Optional.empty();
        }
        gauges.remarkThinWires();
        make(stops);
        return Optional.of(new Result(laid, gauges.all()));
    }

    private Optional<List<Stop>> stops() {
        List<Stop> stops = new ArrayList<>();
        Terminal before = line.from;
        List<RunItem> items = withWire();
        List<Optional<String>> zones =
                new RunZones(site.placement, site.frame.zones(), line, items).all();
        for (int i = 0; i < items.size(); i++) {
            Optional<String> zone = zones.get(i);
            Optional<Stop> stop = Optional.empty();
            if (items.get(i) instanceof Through through) {
                stop = existing(through, before, zone);
            } else if (zone.isPresent()) {
                stop = Optional.of(created(items.get(i), zone.get()));
            }
            if (stop.isEmpty()) {
                return Optional.empty();
            }
            stops.add(stop.get());
            before = stop.get().out();
        }
        return Optional.of(stops);
    }

    /** The items, with a wire at the end if none is written and none is refused. */
    private List<RunItem> withWire() {
        boolean told = line.items.stream().anyMatch(RunItem::settlesWiring);
        Stream<RunItem> written =
                line.items.stream()
                        .filter(i -> i.makes().isPresent() || i.leadsThrough().isPresent());
        Stream<RunItem> wire =
                told ? Stream.of() : Stream.of(new NewWire(Optional.empty(), Optional.empty(), 0));
        return Stream.concat(written, wire).toList();
    }

    private Optional<Stop> existing(Through through, Terminal before, Optional<String> zone) {
        Optional<InlineWay> way = site.terminals.through(through.anchor(), before, line.path);
        return way.flatMap(w -> zone.map(z -> new Stop(w.in(), w.out(), z, Optional.empty())));
    }

    private Stop created(RunItem item, String zone) {
        boolean wire = item instanceof NewWire;
        String id = freshId(wire ? use.wireName : item.makes().orElseThrow());
        return new Stop(
                new Terminal(id, wire ? "a" : "in"),
                new Terminal(id, wire ? "b" : "out"),
                zone,
                Optional.of(item));
    }

    private String freshId(String word) {
        int count = counts.merge(word, 1, Integer::sum);
        return line.prefix + "-" + word + (count == 1 ? "" : "-" + count);
    }

    private boolean claim(List<Stop> stops) {
        boolean free = true;
        for (Stop stop : stops) {
            if (stop.item().isPresent()) {
                free &= site.assembly.claim(stop.id(), line.spot(stop.item().get()));
            }
        }
        return free;
    }

    private boolean completeProtectors(List<Stop> stops) {
        boolean all = true;
        for (Stop stop : stops) {
            if (stop.item().isPresent() && stop.item().get() instanceof NewProtector protector) {
                Optional<PartEntry> complete =
                        site.assembly.complete(stop.id(), entry(protector), line.spot(protector));
                complete.ifPresent(e -> entries.put(stop.id(), e));
                all &= complete.isPresent();
            }
        }
        return all;
    }

    private static PartEntry entry(NewProtector protector) {
        return PartEntry.made(
                kind(protector.makes().orElseThrow()),
                protector.ofClass(),
                Map.of("rating", protector.rating()));
    }

    private static PartKind kind(String word) {
        return PartKinds.called(word).orElseThrow();
    }

    private boolean measureWires(List<Stop> stops) {
        for (int i = 0; i < stops.size(); i++) {
            Stop stop = stops.get(i);
            if (stop.item().isPresent() && stop.item().get() instanceof NewWire wire) {
                Optional<Given> length = wire.length().or(() -> automatic(stop, next(stops, stop)));
                if (length.isEmpty()) {
                    return false;
                }
                PartEntry entry = wire(wire.gauge(), length.get());
                site.assembly
                        .complete(stop.id(), entry, line.spot(wire))
                        .ifPresent(e -> entries.put(stop.id(), e));
            }
        }
        return true;
    }

    private static PartEntry wire(Optional<WireGauge> gauge, Given length) {
        PartEntry wire = PartEntry.made(kind("wire"), Optional.empty(), Map.of("length", length));
        return gauge.map(g -> ofGauge(wire, g)).orElse(wire);
    }

    /** A wire of another gauge. */
    static PartEntry ofGauge(PartEntry wire, WireGauge gauge) {
        return new PartEntry(wire.kind(), wire.said(), wire.values().with("gauge", gauge));
    }

    /** Gauge of a wire, if it has one yet; empty for anything else. */
    static Optional<WireGauge> gaugeOf(PartEntry entry) {
        return entry.values().value("gauge").map(WireGauge.class::cast);
    }

    /** Zone of what follows a wire: the next thing that is no wire, or the end of the run. */
    private Optional<String> next(List<Stop> stops, Stop wire) {
        return stops.stream()
                .skip(stops.indexOf(wire) + 1L)
                .filter(s -> s.item().filter(NewWire.class::isInstance).isEmpty())
                .findFirst()
                .map(Stop::zone)
                .or(() -> site.placement.zoneOf(line.to.part()));
    }

    private Optional<Given> automatic(Stop wire, Optional<String> end) {
        if (end.isEmpty()) {
            return Optional.empty();
        }
        Optional<Double> metres = site.frame.zones().metres(wire.zone(), end.get());
        Zones zones = site.frame.zones();
        boolean both = zones.names().containsAll(List.of(wire.zone(), end.get()));
        if (metres.isEmpty() && both && zones.isSound()) {
            site.report.problem(
                    line.spot(wire.item().orElseThrow()),
                    "no distance leads from zone "
                            + wire.zone()
                            + " to zone "
                            + end.get()
                            + ", so the wire's length is not known",
                    "write the length (wire 1.2 m), or add the distance to the study");
        }
        String way =
                wire.zone().equals(end.get())
                        ? "in " + wire.zone()
                        : wire.zone() + " to " + end.get();
        return metres.map(m -> new Given(Quantity.of(m, Dimension.LENGTH), Origin.AUTOMATIC, way));
    }

    private static boolean isOpen(Stop stop) {
        return stop.item()
                .filter(NewWire.class::isInstance)
                .filter(i -> ((NewWire) i).gauge().isEmpty())
                .isPresent();
    }

    private void make(List<Stop> stops) {
        Spot at = new Spot(line.path, 0);
        Terminal before = line.from;
        for (Stop stop : stops) {
            PartEntry entry = entries.get(stop.id());
            if (stop.item().isPresent() && entry != null) {
                site.assembly.make(stop.id(), entry, stop.zone(), List.of());
                laid.add(new LaidPart(stop.id(), entry, stop.zone(), isOpen(stop)));
            }
            if (!before.equals(stop.in())) {
                site.assembly.join(before, stop.in(), at);
            }
            before = stop.out();
        }
        site.assembly.join(before, line.to, at);
    }
}

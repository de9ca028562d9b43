package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.files.candidate.RunBuilder.LaidPart;
import stillturning.files.candidate.RunBuilder.PlannedRun;
import stillturning.files.candidate.RunBuilder.Result;
import stillturning.files.candidate.RunBuilder.RunContext;
import stillturning.files.candidate.RunBuilder.WireUse;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.RunText;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.model.LoadNeed;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.Part;
import stillturning.quantity.WireGauge;
import stillturning.yaml.DocumentPlaces;

/** Builds a candidate's links, feeds and returns. */
final class RunsReader {

    private static final String MINUS = "minus";

    /** A feed whose load and input are known. */
    private record Feed(String key, String input, RunText run) {
        String path() {
            return DocumentPlaces.under("feeds", key);
        }

        String prefix() {
            return RunsReader.prefix(key);
        }
    }

    /** A wire back from a load, under the names of the run that asks for it. */
    private record Return(String path, String prefix, Terminal ground) {}

    private final CandidateEntry candidate;
    private final RunContext site;

    /** Inputs that have one return in common, by its wire. */
    private final Map<String, String> shared = new HashMap<>();

    private final Map<String, List<LaidPart>> laid = new LinkedHashMap<>();
    private final Map<Terminal, Spot> fed = new LinkedHashMap<>();

    RunsReader(CandidateEntry candidate, RunContext site) {
        this.candidate = candidate;
        this.site = site;
    }

    /** Every input that has a feed, and the feed's place. */
    Map<Terminal, Spot> fed() {
        return fed;
    }

    /** Builds them all. */
    void build() {
        candidate.links().forEach(this::link);
        Map<LoadNeed, List<Feed>> feeds = new LinkedHashMap<>();
        candidate.feeds().forEach((key, run) -> sortIn(feeds, key, run));
        feeds.forEach(this::feeds);
    }

    /** Wires whose gauge is not written. */
    Set<String> openGauges() {
        return laid.values().stream()
                .flatMap(List::stream)
                .filter(LaidPart::openGauge)
                .map(LaidPart::id)
                .collect(Collectors.toSet());
    }

    /** Gives wires other sizes. */
    void resize(Map<String, Cable> sizes) {
        laid.values()
                .forEach(
                        line ->
                                line.replaceAll(
                                        l ->
                                                Optional.ofNullable(sizes.get(l.id()))
                                                        .map(size -> resized(l, size))
                                                        .orElse(l)));
    }

    private LaidPart resized(LaidPart wire, Cable size) {
        LaidPart other = wire.of(size);
        site.assembly().make(other.id(), other.entry(), other.zone(), List.of());
        return other;
    }

    /** What became of each line. */
    List<Expanded> expanded() {
        return laid.entrySet().stream()
                .map(e -> new Expanded(e.getKey(), e.getValue().stream().map(this::shown).toList()))
                .toList();
    }

    private Expanded.ExpandedPart shown(LaidPart laid) {
        String inputs = shared.get(laid.id());
        return inputs == null
                ? laid.shown()
                : laid.shown().with("the only return of the inputs " + inputs);
    }

    /** Writes down the gauges that nobody wrote. */
    void noteOpenGauges() {
        laid.values().stream()
                .flatMap(List::stream)
                .filter(LaidPart::openGauge)
                .forEach(
                        wire ->
                                RunBuilder.gaugeOf(wire.entry())
                                        .ifPresent(
                                                gauge ->
                                                        site.ledger()
                                                                .automatic(
                                                                        Assembly.pathOf(wire.id())
                                                                                + ".gauge",
                                                                        gauge.name())));
    }

    private void show(String path, Result result) {
        laid.computeIfAbsent(path, p -> new ArrayList<>()).addAll(result.laid());
    }

    private void sortIn(Map<LoadNeed, List<Feed>> feeds, String key, RunText run) {
        Optional<LoadNeed> load = loadOf(key);
        Optional<Feed> feed = load.flatMap(l -> feedOf(key, run, l));
        if (load.isPresent() && feed.isPresent()) {
            feeds.computeIfAbsent(load.get(), l -> new ArrayList<>()).add(feed.get());
        } else {
            site.assembly().breakRun(prefix(key));
        }
    }

    private void link(String key, RunText run) {
        String path = DocumentPlaces.under("links", key);
        if (run.back().isPresent()) {
            site.report()
                    .problem(
                            new Spot(path, run.back().get().offset()),
                            "a link has no return",
                            "make a link of its own of it");
        }
        if (run.to().isEmpty()) {
            site.report()
                    .problem(
                            new Spot(path, 0),
                            "the link does not say where it ends",
                            "write from "
                                    + run.from().part()
                                    + " to and the part that it leads to");
            site.assembly().breakRun(prefix(key));
            return;
        }
        Optional<Terminal> from = site.terminals().exit(run.from(), path);
        Optional<Terminal> to = site.terminals().entry(run.to().get(), path);
        if (from.isPresent() && to.isPresent()) {
            WireUse use = new WireUse("wire", Optional.empty(), Optional.empty(), Optional.empty());
            PlannedRun line = new PlannedRun(path, prefix(key), from.get(), to.get(), run.items());
            new RunBuilder(site, line, use).build().ifPresent(r -> show(path, r));
        } else {
            site.assembly().breakRun(prefix(key));
        }
    }

    private static String prefix(String key) {
        return key.replace('.', '-');
    }

    private Optional<LoadNeed> loadOf(String key) {
        String id = key.contains(".") ? key.substring(0, key.indexOf('.')) : key;
        Spot spot = Spot.atKey(DocumentPlaces.under("feeds", key));
        if (!site.frame().loadNames().contains(id)) {
            site.report().unknown(spot, "load", id, site.frame().loadNames());
        } else if (candidate.leavesOut().contains(id)) {
            site.report()
                    .problem(
                            spot,
                            "the candidate leaves \"" + id + "\" out, and feeds it",
                            "take it off leaves-out, or take the feed out");
            return Optional.empty();
        }
        Optional<LoadNeed> load = site.frame().load(id);
        if (load.filter(LoadNeed::selfPowered).isPresent()) {
            site.report()
                    .problem(
                            spot,
                            "the study calls \"" + id + "\" self-powered, so nothing feeds it",
                            "take the feed out, and lead its terminal kill to a switch by a link");
            return Optional.empty();
        }
        return load;
    }

    private Optional<Feed> feedOf(String key, RunText run, LoadNeed load) {
        Spot spot = Spot.atKey(DocumentPlaces.under("feeds", key));
        boolean named = key.contains(".");
        String input = named ? key.substring(key.indexOf('.') + 1) : load.inputs().get(0);
        if (!named && load.inputs().size() > 1) {
            site.report()
                    .problem(
                            spot,
                            "\""
                                    + load.id()
                                    + "\" has the inputs "
                                    + String.join(", ", load.inputs()),
                            "write " + load.id() + "." + input + ", and a feed for each");
            return Optional.empty();
        }
        if (!load.inputs().contains(input)) {
            site.report()
                    .unknown(
                            spot,
                            "input",
                            key,
                            load.inputs().stream().map(i -> load.id() + "." + i).toList());
            return Optional.empty();
        }
        if (run.to().isPresent()) {
            site.report()
                    .problem(
                            new Spot(DocumentPlaces.under("feeds", key), run.to().get().offset()),
                            "a feed ends at its load",
                            "take \"to " + run.to().get().part() + "\" out, or make it a link");
        }
        fed.put(new Terminal(load.id(), input), spot);
        return Optional.of(new Feed(key, input, run));
    }

    private void feeds(LoadNeed load, List<Feed> feeds) {
        boolean wired = site.assembly().isJoined(new Terminal(load.id(), MINUS));
        List<Return> returns = wired ? List.of() : returns(load, feeds);
        OptionalDouble back = returns.stream().mapToDouble(r -> metres(load, r.ground)).max();
        List<WireGauge> gauges = new ArrayList<>();
        boolean complete = wired || back.isPresent();
        for (Feed feed : feeds) {
            Optional<Result> result = feed(load, feed, back.orElse(0.0));
            result.ifPresent(r -> gauges.addAll(r.gauges()));
            complete &= result.isPresent();
        }
        if (complete || site.assembly().isForDrawing()) {
            Optional<WireGauge> thickest = gauges.stream().max(Comparator.naturalOrder());
            returns.forEach(r -> giveBack(load, r, thickest));
        }
    }

    private Optional<Result> feed(LoadNeed load, Feed feed, double back) {
        Optional<Terminal> from = site.terminals().exit(feed.run.from(), feed.path());
        if (from.isEmpty()) {
            site.assembly().breakRun(feed.prefix());
            return Optional.empty();
        }
        Terminal to = new Terminal(load.id(), feed.input);
        PlannedRun line =
                new PlannedRun(feed.path(), feed.prefix(), from.get(), to, feed.run.items());
        WireUse use =
                new WireUse(
                        "wire",
                        Optional.of(load.demand().amps()),
                        Optional.of(back),
                        Optional.empty());
        Optional<Result> result = new RunBuilder(site, line, use).build();
        result.ifPresent(r -> show(feed.path(), r));
        return result;
    }

    private void giveBack(LoadNeed load, Return back, Optional<WireGauge> thickest) {
        Terminal minus = new Terminal(load.id(), MINUS);
        NewWire wire = new NewWire(Optional.empty(), Optional.empty(), 0);
        PlannedRun line = new PlannedRun(back.path, back.prefix, minus, back.ground, List.of(wire));
        WireUse use =
                new WireUse(
                        "return", Optional.of(load.demand().amps()), Optional.empty(), thickest);
        Optional<Result> result = new RunBuilder(site, line, use).build();
        result.ifPresent(r -> show(back.path, r));
        if (load.inputs().size() > 1 && back.prefix.equals(load.id())) {
            result.stream()
                    .flatMap(r -> r.laid().stream())
                    .forEach(l -> shared.put(l.id(), String.join(" and ", load.inputs())));
        }
    }

    private double metres(LoadNeed load, Terminal ground) {
        return site.placement()
                .zoneOf(ground.part())
                .flatMap(zone -> site.frame().zones().metres(load.zone(), zone))
                .orElse(0.0);
    }

    /** Each input's own return where the feeds of several say one, or else one for all of them. */
    private List<Return> returns(LoadNeed load, List<Feed> feeds) {
        List<Feed> backs = feeds.stream().filter(f -> f.run.back().isPresent()).toList();
        if (backs.size() < 2) {
            return ground(load, feeds, backs).stream()
                    .map(g -> new Return(feeds.get(0).path(), load.id(), g))
                    .toList();
        }
        return backs.stream()
                .flatMap(
                        f ->
                                landing(f.run.back().orElseThrow(), f.path()).stream()
                                        .map(g -> new Return(f.path(), f.prefix(), g)))
                .toList();
    }

    /** Ground point at which a load's return lands; absent after a problem was told. */
    private Optional<Terminal> ground(LoadNeed load, List<Feed> feeds, List<Feed> backs) {
        if (!backs.isEmpty()) {
            return landing(backs.get(0).run.back().orElseThrow(), backs.get(0).path());
        }
        String path = DocumentPlaces.under("returns", load.zone());
        String named = candidate.returns().get(load.zone());
        if (named == null && !site.frame().zones().names().contains(load.zone())) {
            return Optional.empty();
        }
        if (named == null) {
            site.report()
                    .problem(
                            Spot.atKey(feeds.get(0).path()),
                            "nothing says where loads in zone " + load.zone() + " return",
                            "add returns: {"
                                    + load.zone()
                                    + ": some-ground}, or \"return some-ground\" to the feed");
            return Optional.empty();
        }
        int point = named.indexOf('.');
        return landing(
                new NamedTerminal(
                        point < 0 ? named : named.substring(0, point),
                        point < 0 ? Optional.empty() : Optional.of(named.substring(point + 1)),
                        0),
                path);
    }

    private Optional<Terminal> landing(NamedTerminal anchor, String path) {
        boolean vague =
                anchor.terminal().isEmpty()
                        && site.assembly()
                                .part(anchor.part())
                                .filter(p -> p.role() != Part.Role.GROUND)
                                .isPresent();
        if (vague) {
            site.report()
                    .problem(
                            new Spot(path, anchor.offset()),
                            "\"" + anchor.part() + "\" is no ground point",
                            "write a ground, or the terminal, such as " + anchor.part() + ".minus");
            return Optional.empty();
        }
        return site.terminals().entry(anchor, path);
    }
}

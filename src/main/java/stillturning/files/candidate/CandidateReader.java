package stillturning.files.candidate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.Catalogue;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.Values;
import stillturning.files.finding.PartPlace;
import stillturning.files.finding.ProblemCollector;
import stillturning.files.finding.ProblemCollector.Spot;
import stillturning.files.value.ValueLog;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.model.Chances.Odds;
import stillturning.model.Cockpit;
import stillturning.model.HalfDrawn;
import stillturning.model.Installation.FittedParts;
import stillturning.model.Installation.WireRoutes;
import stillturning.model.Join;
import stillturning.model.LoadNeed;
import stillturning.model.Terminal;
import stillturning.model.wiring.OpenGauges;
import stillturning.parts.Load;
import stillturning.parts.Tag;
import stillturning.yaml.DocumentPlaces;

/** Makes a candidate of what is written, every sketch expanded, and tells what does not fit. */
public final class CandidateReader {

    private final String id;
    private final CandidateEntry candidate;
    private final CheckedStudy frame;
    private final ProblemCollector report;
    private final ValueLog ledger;
    private final Assembly assembly;
    private final Placement placement;
    private List<Expanded> expanded = List.of();
    private FittedParts fit = FittedParts.UNKNOWN;
    private Odds odds = Odds.UNKNOWN;

    public CandidateReader(
            String id,
            CandidateEntry candidate,
            CheckedStudy frame,
            ProblemCollector report,
            ValueLog ledger) {
        this(
                id,
                candidate,
                frame,
                new Assembly(catalogue(frame), frame.aircraft().nominalVolts(), report, ledger),
                report,
                ledger);
    }

    private CandidateReader(
            String id,
            CandidateEntry candidate,
            CheckedStudy frame,
            Assembly assembly,
            ProblemCollector report,
            ValueLog ledger) {
        this.id = id;
        this.candidate = candidate;
        this.frame = frame;
        this.report = report;
        this.ledger = ledger;
        this.assembly = assembly;
        this.placement = new Placement(candidate, frame);
    }

    /** One that makes what can be drawn of a candidate with mistakes. */
    public static CandidateReader forDrawing(
            String id, CandidateEntry entry, CheckedStudy frame, ProblemCollector unheard) {
        double nominalVolts = frame.aircraft().nominalVolts();
        return new CandidateReader(
                id,
                entry,
                frame,
                Assembly.forDrawing(catalogue(frame), nominalVolts, unheard),
                unheard,
                new ValueLog("", Variation.NONE));
    }

    private static Catalogue catalogue(CheckedStudy frame) {
        return Catalogue.shipped().withUsual(frame.classes());
    }

    /** What can be drawn; what is wrong is not told. */
    public HalfDrawn halfDrawn() {
        build();
        return new HalfDrawn(
                id,
                candidate.candidate().isBlank() ? id : candidate.candidate(),
                assembly.parts(),
                joins(),
                candidate.positions().flight(),
                frame.aircraft().engine().logic().loads(),
                assembly.stoodFor());
    }

    /** What became of each line of the file. */
    public List<Expanded> expanded() {
        return expanded;
    }

    /** What only the checking of sizes asks for. */
    public FittedParts fit() {
        return fit;
    }

    /** What only the counting of failures asks for. */
    public Odds odds() {
        return odds;
    }

    /**
     * Class that was taken of protectors that name none, by kind, where another class would open at
     * other times and the study does not say which.
     */
    public Map<String, String> supposedClasses() {
        Map<String, String> supposed = new TreeMap<>(assembly.protectorsOfUsualClass());
        supposed.keySet().removeAll(frame.classes().keySet());
        return supposed;
    }

    /** Where each part is asked for. */
    public Map<String, PartPlace> places() {
        return assembly.places();
    }

    /**
     * The candidate, absent after at least one problem was told.
     *
     * @param chances what the study says of how often things fail
     */
    public Optional<Candidate> read(ChancesReader.StatedChances chances) {
        leavesOut();
        returns();
        RunsReader runs = build();
        fit = InstallationReader.fit(candidate, assembly, report, ledger);
        chooseGauges(runs);
        odds = new OddsReader(candidate, expanded, assembly, report).read(chances, frame);
        fit = fit.going(new WireRoutes(odds.routes(), odds.shared()));
        WiringChecks wiring = new WiringChecks(assembly, report);
        boolean wired = report.isClean() && assembly.isComplete();
        Map<Terminal, Spot> fed = wiring.fedInputs(runs.fed());
        wiring.checkFeeds(frame, fed, candidate.leavesOut());
        CandidateEntry stated = Values.cockpitMapped(candidate, ledger);
        Cockpit cockpit = new CockpitReader(stated, assembly, frame, report).read();
        Candidate read =
                new Candidate(
                        id,
                        candidate.candidate(),
                        candidate.about().orElse(""),
                        assembly.parts(),
                        joins(),
                        cockpit);
        if (wired) {
            wiring.check();
            new MetalPaths(read, assembly, report).check(fed);
        }
        return Optional.of(read).filter(c -> report.isClean());
    }

    private RunsReader build() {
        addLoads();
        candidate.parts().forEach(this::addPart);
        Terminals terminals = new Terminals(assembly, frame, report);
        RunsReader runs =
                new RunsReader(
                        candidate,
                        new RunBuilder.RunContext(
                                assembly, terminals, placement, frame, report, ledger));
        runs.build();
        expanded = runs.expanded();
        return runs;
    }

    private void chooseGauges(RunsReader runs) {
        if (report.isClean() && assembly.isComplete()) {
            Cockpit levers =
                    new Cockpit(candidate.positions().flight(), Map.of(), List.of(), List.of());
            Candidate bare = new Candidate(id, "", "", assembly.parts(), joins(), levers);
            runs.resize(
                    new OpenGauges(
                                    frame.aircraft(),
                                    frame.laying(),
                                    fit.wires(),
                                    bare,
                                    runs.openGauges())
                            .chosen());
            expanded = runs.expanded();
        }
        runs.noteOpenGauges();
    }

    private List<Join> joins() {
        return assembly.joins().stream().map(Assembly.Joined::join).toList();
    }

    private void leavesOut() {
        for (int i = 0; i < candidate.leavesOut().size(); i++) {
            String load = candidate.leavesOut().get(i);
            Spot spot = new Spot(DocumentPlaces.item("leaves-out", i), 0);
            if (!frame.loadNames().contains(load)) {
                report.unknown(spot, "load", load, frame.loadNames());
            } else if (frame.needsForEngine(load)) {
                report.problem(spot, "the engine needs \"" + load + "\"", "feed it");
            }
        }
    }

    private void returns() {
        for (String zone : candidate.returns().keySet()) {
            if (!frame.zones().names().contains(zone)) {
                report.unknown(
                        Spot.atKey(DocumentPlaces.under("returns", zone)),
                        "zone",
                        zone,
                        frame.zones().names());
            }
        }
    }

    private void addLoads() {
        for (LoadNeed need : frame.aircraft().loads()) {
            if (!candidate.leavesOut().contains(need.id()) && !need.selfPowered()) {
                Tag tag = new Tag(need.id(), need.label(), need.zone(), Tag.Burden.NONE);
                assembly.add(
                        new Load(tag, need.demand(), need.tolerance(), need.inputs()),
                        Spot.atKey(DocumentPlaces.under("loads", need.id())));
            }
        }
    }

    private void addPart(String part, PartEntry entry) {
        Spot spot = Spot.atKey(Assembly.pathOf(part));
        report.refusePoint(spot, part);
        if (!assembly.claim(part, spot)) {
            return;
        }
        entry.said().price().ifPresent(p -> currency(part, p.currency()));
        Optional<PartEntry> complete = assembly.complete(part, entry, classSpot(part, entry));
        Optional<String> zone = placement.zoneOf(part);
        if (zone.isEmpty() && assembly.isForDrawing()) {
            zone = Optional.of("");
        }
        if (zone.isEmpty()) {
            report.problem(
                    spot, "nothing says where this part sits", "add zone: and a zone of the study");
        } else if (!frame.zones().names().contains(zone.get()) && entry.zone().isPresent()) {
            report.unknown(
                    new Spot(DocumentPlaces.under(Assembly.pathOf(part), "zone"), 0),
                    "zone",
                    zone.get(),
                    frame.zones().names());
        }
        if (complete.isPresent() && zone.isPresent()) {
            assembly.make(part, complete.get(), zone.get(), placement.arrivalsAt(part));
        }
    }

    private static Spot classSpot(String part, PartEntry entry) {
        String path = Assembly.pathOf(part);
        return entry.ofClass().isPresent()
                ? new Spot(DocumentPlaces.under(path, "class"), 0)
                : Spot.atKey(path);
    }

    private void currency(String part, String code) {
        if (!code.equals(frame.heading().currency())) {
            report.problem(
                    DocumentPlaces.under(Assembly.pathOf(part), "price"),
                    "the price is in "
                            + code
                            + ", and the study counts in "
                            + frame.heading().currency(),
                    "write it in " + frame.heading().currency());
        }
    }
}

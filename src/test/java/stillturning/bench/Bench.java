package stillturning.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Join;
import stillturning.model.LoadNeed;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Reach;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.model.Zone;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Tag;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Diode;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.source.SelfPoweredIgnition;
import stillturning.parts.switching.Contactor;
import stillturning.parts.switching.Switch;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** A workbench on which a test wires up a small aircraft by hand. */
public final class Bench {

    /** A load that minds little. */
    public static final Tolerance HARDY = new Tolerance(6, 6.5, 0.02, 0.5, 40, 1);

    private final List<Part> parts = new ArrayList<>();
    private final List<Join> joins = new ArrayList<>();
    private final List<LoadNeed> needs = new ArrayList<>();
    private final Map<String, String> levers = new LinkedHashMap<>();
    private final List<Cue> cues = new ArrayList<>();
    private final List<Procedure> procedures = new ArrayList<>();
    private Engine engine = new Engine(new EngineLogic.One("engine-needs"), 0.3, 2, true, 30);
    private List<Phase> phases = List.of(new Phase("cruise", 3600, 60));
    private double enoughSeconds = 1800;
    private double celsius = Zone.USUAL_CELSIUS;
    private final Map<String, Reach> reach = new LinkedHashMap<>();
    private Map<String, String> masterOff = Map.of();
    private Map<String, String> starting = Map.of();

    /** An empty bench with one ground on the structure, called {@code ground}. */
    public Bench() {
        parts.add(new GroundPoint(tag("ground"), true, 1e-4));
    }

    public static Tag tag(String id) {
        return new Tag(id, id, "bench", Tag.Burden.NONE);
    }

    public Bench battery(String id, double ampHours, double ohms, double peukert) {
        parts.add(
                new Battery(
                        tag(id),
                        new OpenCircuit(RestVoltage.LEAD_ACID, 1),
                        6,
                        new Capacity(ampHours * 3600, 20, peukert),
                        ohms,
                        1,
                        Optional.empty()));
        return join(id, "minus", "ground", "stud");
    }

    public Bench alternator(String id, double amps) {
        parts.add(
                new Alternator(
                        tag(id),
                        new Regulation(14.2, 0.005),
                        new OutputBySpeed(
                                List.of(
                                        new OutputBySpeed.OutputPoint(20, 0),
                                        new OutputBySpeed.OutputPoint(60, amps))),
                        4,
                        0,
                        Shelf.STEADY));
        return join(id, "case", "ground", "stud");
    }

    public Bench bus(String id, String... studs) {
        parts.add(new Bus(tag(id), List.of(studs), 1e-4));
        return this;
    }

    public Bench breaker(String id, double amps) {
        parts.add(new Breaker(tag(id), amps, 0.02, ProtectorCurves.FAST_BREAKER));
        return this;
    }

    public Bench closedSwitch(String id, String position) {
        parts.add(new Switch(tag(id), 1, Switch.Throw.SINGLE, 0.005));
        levers.put(id, position);
        return this;
    }

    public Bench contactor(String id) {
        parts.add(new Contactor(tag(id), new Contactor.Winding(12, 8, 3, 0.015), 0.0005));
        return this;
    }

    public Bench diode(String id) {
        parts.add(new Diode(tag(id), 1e-5, 0.0275, 0.002));
        return this;
    }

    public Bench wire(String id, double metres, double ohms) {
        parts.add(new Wire(tag(id), Cable.awg("18").orElseThrow(), metres, ohms));
        return this;
    }

    public Bench load(String id, Demand.DemandKind kind, double amps, Tolerance tolerance) {
        return load(new Load(tag(id), new Demand(kind, amps, 12), tolerance, List.of("plus")));
    }

    /** A load made elsewhere, of which the study asks that it runs in cruise. */
    public Bench load(Load load) {
        return loadWithoutReturn(load).join(load.id(), "minus", "ground", "stud");
    }

    /** The same with its return still to be joined. */
    public Bench loadWithoutReturn(Load load) {
        parts.add(load);
        needs.add(
                new LoadNeed(
                        load.id(),
                        load.id(),
                        "bench",
                        load.demand(),
                        load.tolerance(),
                        load.inputs(),
                        new LoadNeed.Use(Set.of("cruise"), 1),
                        OptionalInt.empty()));
        return this;
    }

    /** An ignition that is a load without feed, its case grounded. */
    public Bench ignition(SelfPoweredIgnition ignition) {
        parts.add(ignition);
        needs.add(
                new LoadNeed(
                        ignition.id(),
                        ignition.id(),
                        "bench",
                        new Demand(Demand.DemandKind.SELF_POWERED, 0, 12),
                        HARDY,
                        List.of(),
                        new LoadNeed.Use(Set.of("cruise"), 1),
                        OptionalInt.empty()));
        return join(ignition.id(), "case", "ground", "stud");
    }

    /** When a load that is already there runs, and in which rank it may be shed. */
    public Bench use(String load, LoadNeed.Use use, int rank) {
        needs.replaceAll(
                n ->
                        n.id().equals(load)
                                ? new LoadNeed(
                                        n.id(),
                                        n.label(),
                                        n.zone(),
                                        n.demand(),
                                        n.tolerance(),
                                        n.inputs(),
                                        use,
                                        OptionalInt.of(rank))
                                : n);
        return this;
    }

    /** The flight; failures happen in its phase {@code cruise}. */
    public Bench phases(Phase... flown) {
        phases = List.of(flown);
        return this;
    }

    public Bench procedure(Procedure procedure) {
        procedures.add(procedure);
        return this;
    }

    /** Any other part, not joined to anything yet. */
    public Bench part(Part part) {
        parts.add(part);
        return this;
    }

    /** Where a lever stands in normal flight. */
    public Bench lever(String lever, String position) {
        levers.put(lever, position);
        return this;
    }

    /** Where levers are moved while the engine is started. */
    public Bench starting(Map<String, String> positions) {
        starting = positions;
        return this;
    }

    public Bench masterOff(Map<String, String> positions) {
        masterOff = positions;
        return this;
    }

    public Bench engine(EngineLogic needs, boolean turnedByAirspeed) {
        return engine(new Engine(needs, 0.3, 2, turnedByAirspeed, 30));
    }

    public Bench engine(Engine asks) {
        engine = asks;
        return this;
    }

    /** Temperature of the whole bench (°C). */
    public Bench celsius(double everywhere) {
        celsius = everywhere;
        return this;
    }

    /** How long an engine must run on after a failure not to count as lost. */
    public Bench enough(double seconds) {
        enoughSeconds = seconds;
        return this;
    }

    public Bench cue(String name, Cue.Sign sign) {
        return cue(new Cue(name, sign, Optional.empty()));
    }

    public Bench cue(Cue cue) {
        cues.add(cue);
        return this;
    }

    public Bench procedure(
            String name, String cue, double seconds, Map<String, String> moves, String... sheds) {
        return procedure(name, List.of(cue), seconds, moves, sheds);
    }

    public Bench procedure(
            String name,
            List<String> cues,
            double seconds,
            Map<String, String> moves,
            String... sheds) {
        procedures.add(new Procedure(name, cues, seconds, moves, List.of(sheds)));
        return this;
    }

    public Bench join(String part, String terminal, String otherPart, String otherTerminal) {
        joins.add(new Join(new Terminal(part, terminal), new Terminal(otherPart, otherTerminal)));
        return this;
    }

    public Candidate candidate() {
        return new Candidate(
                "bench",
                "Bench",
                "",
                parts,
                joins,
                new Cockpit(levers, masterOff, starting, cues, procedures, reach()));
    }

    /** Everything is in reach of the seat, if not said otherwise. */
    private Map<String, Reach> reach() {
        Map<String, Reach> all = new LinkedHashMap<>();
        for (Part part : parts) {
            part.levers().forEach(lever -> all.put(lever.name(), Reach.SEAT));
        }
        all.putAll(reach);
        return all;
    }

    /** From where a lever can be moved. */
    public Bench reach(String lever, Reach from) {
        reach.put(lever, from);
        return this;
    }

    public Study study() {
        Phase cruise =
                phases.stream().filter(p -> p.name().equals("cruise")).findFirst().orElseThrow();
        Zone zone = new Zone("bench", "bench", Zone.FirewallSide.COLD, Set.of(), celsius);
        return new Study(
                "bench",
                new Study.StudyHeading("Bench", "", true, "EUR"),
                new Study.Aircraft(12, needs, engine, phases, List.of(zone)),
                new Study.Goals(
                        cruise, enoughSeconds, List.of(), List.of(), Optional.empty(), List.of()),
                List.of(candidate()));
    }

    public Timeline timeline() throws UntoldStory {
        return new Timeline(study(), candidate());
    }

    public Failure failure(String name) {
        return FailureCatalogue.singlesOf(candidate()).stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no failure " + name));
    }
}

package stillturning.structure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import stillturning.model.Candidate;
import stillturning.model.Cockpit;
import stillturning.model.Engine;
import stillturning.model.EngineLogic;
import stillturning.model.Join;
import stillturning.model.Phase;
import stillturning.model.Procedure;
import stillturning.model.Study;
import stillturning.model.Terminal;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.Tag;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Channel.Switching;
import stillturning.parts.element.Channel.Trip;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Connector;
import stillturning.parts.joining.Diode;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.source.DcConverter;
import stillturning.parts.switching.Contactor;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.switching.SolidStateController.OutputChannel;
import stillturning.parts.switching.Switch;

/** Wires up invented candidates of which only the shape counts. */
final class Rig {

    private static final Demand DEMAND = new Demand(Demand.DemandKind.CONSTANT_CURRENT, 1, 12);
    private static final Tolerance TOLERANCE = new Tolerance(6, 6.5, 0.02, 0.5, 40, 1);

    private final List<Part> parts = new ArrayList<>();
    private final List<Join> joins = new ArrayList<>();
    private final Map<String, String> flight = new LinkedHashMap<>();
    private final List<Procedure> procedures = new ArrayList<>();
    private String zone = "rig";
    private EngineLogic logic = new EngineLogic.One("nothing");

    private Tag tag(String id) {
        return new Tag(id, id, zone, Tag.Burden.NONE);
    }

    /** Where the parts that follow are. */
    Rig in(String place) {
        zone = place;
        return this;
    }

    Rig battery(String id) {
        return add(
                new Battery(
                        tag(id),
                        new OpenCircuit(RestVoltage.LEAD_ACID, 1),
                        6,
                        new Capacity(72_000, 20, 1),
                        0.01,
                        1,
                        Optional.empty()));
    }

    Rig alternator(String id, boolean needsBattery) {
        OutputBySpeed output =
                new OutputBySpeed(
                        List.of(
                                new OutputBySpeed.OutputPoint(20, 0),
                                new OutputBySpeed.OutputPoint(60, 40)));
        Alone alone =
                new Alone(
                        needsBattery ? WithoutBattery.GIVES_UP : WithoutBattery.STEADY,
                        0.5,
                        35,
                        0.4);
        return add(new Alternator(tag(id), new Regulation(14.2, 0.005), output, 4, 14.2, alone));
    }

    Rig bus(String id, String... studs) {
        return add(new Bus(tag(id), List.of(studs), 1e-4));
    }

    Rig breaker(String id) {
        return add(new Breaker(tag(id), 10, 0.01, ProtectorCurves.FAST_BREAKER));
    }

    Rig wire(String id) {
        return add(new Wire(tag(id), Cable.SIZES.get(4), 1, 0.01));
    }

    Rig diode(String id) {
        return add(new Diode(tag(id), 1e-5, 0.0275, 0.002));
    }

    Rig connector(String id, int pins) {
        return add(new Connector(tag(id), pins, 1e-3));
    }

    Rig contactor(String id) {
        return add(new Contactor(tag(id), new Contactor.Winding(12, 8, 3, 0.015), 5e-4));
    }

    Rig converter(String id) {
        return add(
                new DcConverter(
                        tag(id),
                        new DcConverter.Rating(12, 0.01, 5),
                        0.9,
                        new Conversion.InputSide(0.1, 8, 9)));
    }

    Rig controller(String id, boolean... closedByDefault) {
        List<OutputChannel> outputs = new ArrayList<>();
        for (boolean closed : closedByDefault) {
            outputs.add(
                    new OutputChannel(
                            new Switching(0.01, 100),
                            new Trip(10, ProtectorCurves.ELECTRONIC_TRIP, 1),
                            closed));
        }
        return add(new SolidStateController(tag(id), outputs, DEMAND, TOLERANCE));
    }

    Rig ground(String id) {
        return add(new GroundPoint(tag(id), true, 1e-4));
    }

    Rig lever(String id, Switch.Throw throwing, int poles, String position) {
        flight.put(id, position);
        return add(new Switch(tag(id), poles, throwing, 0.005));
    }

    Rig load(String id, String... inputs) {
        return add(new Load(tag(id), DEMAND, TOLERANCE, List.of(inputs)));
    }

    Rig flight(String lever, String position) {
        flight.put(lever, position);
        return this;
    }

    Rig procedure(String name, Map<String, String> moves) {
        procedures.add(new Procedure(name, List.of(), 5, moves, List.of()));
        return this;
    }

    Rig allOf(String... loads) {
        logic = EngineLogic.allOf(ones(loads));
        return this;
    }

    Rig anyOf(String... loads) {
        logic = EngineLogic.anyOf(ones(loads));
        return this;
    }

    Rig needs(EngineLogic needed) {
        logic = needed;
        return this;
    }

    /** Joins terminals, each written {@code part.name}, in one net. */
    Rig join(String... terminals) {
        List<Terminal> all = Arrays.stream(terminals).map(Rig::terminal).toList();
        all.stream().skip(1).forEach(other -> joins.add(new Join(all.get(0), other)));
        return this;
    }

    Candidate candidate() {
        return new Candidate(
                "rig",
                "Rig",
                "",
                parts,
                joins,
                new Cockpit(flight, Map.of(), List.of(), procedures));
    }

    Study.Aircraft aircraft() {
        Phase cruise = new Phase("cruise", 3600, 60);
        return new Study.Aircraft(
                12, List.of(), new Engine(logic, 0.3, 2, true, 30), List.of(cruise), List.of());
    }

    StructureFindings findings() {
        return Structure.of(aircraft(), candidate());
    }

    /** A part made elsewhere. */
    Rig with(Part part) {
        return add(part);
    }

    private Rig add(Part part) {
        parts.add(part);
        return this;
    }

    private static List<EngineLogic> ones(String... loads) {
        return Arrays.stream(loads).<EngineLogic>map(EngineLogic.One::new).toList();
    }

    private static Terminal terminal(String text) {
        int dot = text.indexOf('.');
        return new Terminal(text.substring(0, dot), text.substring(dot + 1));
    }

    /** Where a test needs a set of names in a fixed order. */
    static Set<String> singlePoints(StructureFindings findings) {
        Set<String> parts = new LinkedHashSet<>();
        findings.singlePoints().forEach(point -> parts.add(point.part()));
        return parts;
    }
}

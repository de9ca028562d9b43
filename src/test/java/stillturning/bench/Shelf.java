package stillturning.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import stillturning.files.PartCatalogue;
import stillturning.parts.Cable;
import stillturning.parts.Load;
import stillturning.parts.Part;
import stillturning.parts.PartKind;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Generator.WithoutBattery;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Management;
import stillturning.parts.element.Management.Limit;
import stillturning.parts.element.Management.Reconnection;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.parts.joining.Bus;
import stillturning.parts.joining.Connector;
import stillturning.parts.joining.Diode;
import stillturning.parts.joining.GroundPoint;
import stillturning.parts.protection.Breaker;
import stillturning.parts.protection.Fuse;
import stillturning.parts.protection.OvervoltageGuard;
import stillturning.parts.protection.ProtectorCurves;
import stillturning.parts.source.Alternator;
import stillturning.parts.source.Battery;
import stillturning.parts.source.DcConverter;
import stillturning.parts.switching.ChangeoverRelay;
import stillturning.parts.switching.ChargeRelay;
import stillturning.parts.switching.Contactor;
import stillturning.parts.switching.SolidStateController;
import stillturning.parts.switching.Switch;

/** Parts to put on a {@link Bench}; every value is invented unless a source is named. */
public final class Shelf {

    /** Cell management that never acts. */
    public static final Management LENIENT = limits(0.1, 100, 10_000, 1);

    /** Goes on without a battery, and does not jump when it loses it. */
    public static final Alone STEADY = new Alone(WithoutBattery.STEADY, 0.5, 35, 0);

    /** Gives up without a battery, and does not jump when it loses it. */
    public static final Alone GIVES_UP = new Alone(WithoutBattery.GIVES_UP, 0.5, 35, 0);

    /** How what needs a feed may answer to its voltage. */
    public static final List<Demand.DemandKind> DRAWING =
            List.of(
                    Demand.DemandKind.CONSTANT_POWER,
                    Demand.DemandKind.CONSTANT_CURRENT,
                    Demand.DemandKind.CONSTANT_RESISTANCE);

    private Shelf() {}

    /** A lead-acid battery without Peukert's loss. */
    public static Battery lead(String id, double ampHours, double ohms, double charge) {
        return new Battery(
                Bench.tag(id),
                new OpenCircuit(RestVoltage.LEAD_ACID, 1),
                6,
                new Capacity(ampHours * 3600, 20, 1),
                ohms,
                charge,
                Optional.empty());
    }

    /** Cell management with one time for all its limits, which never connects again. */
    public static Management limits(
            double underVolts, double overVolts, double overAmps, double seconds) {
        return new Management(
                new Limit(underVolts, seconds),
                new Limit(overVolts, seconds),
                new Limit(overAmps, seconds),
                new Limit(Double.POSITIVE_INFINITY, 0),
                Optional.empty(),
                new Reconnection(new Limit(Double.POSITIVE_INFINITY, 0), 1e-9, 0, 0));
    }

    /** Four LiFePO4 cells with a management system. */
    public static Battery lithium(String id, double ampHours, double charge, Management limits) {
        return new Battery(
                Bench.tag(id),
                new OpenCircuit(RestVoltage.LITHIUM_IRON_PHOSPHATE, 1),
                4,
                new Capacity(ampHours * 3600, 1, 1),
                0.010,
                charge,
                Optional.of(limits));
    }

    /** An alternator that gives nothing at 20 turns a second and all from 60 on. */
    public static Alternator alternator(
            String id, double setVolts, double amps, boolean needsBattery) {
        return alternator(id, setVolts, amps, 0, needsBattery ? GIVES_UP : STEADY);
    }

    /** The same, with what its field and the loss of its battery do to it. */
    public static Alternator alternator(
            String id, double setVolts, double amps, double fullFieldVolts, Alone alone) {
        return new Alternator(
                Bench.tag(id),
                new Regulation(setVolts, 0.005),
                new OutputBySpeed(
                        List.of(
                                new OutputBySpeed.OutputPoint(20, 0),
                                new OutputBySpeed.OutputPoint(60, amps))),
                4,
                fullFieldVolts,
                alone);
    }

    public static Fuse fuse(String id, double amps) {
        return fuse(id, amps, ProtectorCurves.BLADE_FUSE);
    }

    public static Fuse fuse(String id, double amps, TimeCurrentCurve curve) {
        return new Fuse(Bench.tag(id), amps, 0.004, curve);
    }

    /** A contactor that pulls in at 8 V and lets go at 3 V, both after some time. */
    public static Contactor contactor(String id, double seconds) {
        return new Contactor(Bench.tag(id), new Contactor.Winding(12, 8, 3, seconds), 0.0005);
    }

    /** A changeover relay that pulls in at 7.5 V and lets go at 1.5 V, both after 8 ms. */
    public static ChangeoverRelay changeoverRelay(String id) {
        return new ChangeoverRelay(
                Bench.tag(id), new Contactor.Winding(90, 7.5, 1.5, 0.008), 0.005);
    }

    /** A charge relay that closes and opens 5 s after its input has passed these voltages. */
    public static ChargeRelay chargeRelay(String id, double closesAt, double opensAt) {
        return new ChargeRelay(
                Bench.tag(id),
                new Coil("sensing", "in", "minus", 140, closesAt, opensAt, 5, 5),
                0.001);
    }

    public static OvervoltageGuard guard(String id, double volts, double seconds) {
        return new OvervoltageGuard(
                Bench.tag(id),
                new Guard.GuardTrip(volts, seconds, Guard.Action.DISCONNECTS),
                0.001);
    }

    /** A guard that shorts its input. */
    public static OvervoltageGuard crowbar(String id, double volts, double seconds) {
        return new OvervoltageGuard(
                Bench.tag(id), new Guard.GuardTrip(volts, seconds, Guard.Action.SHORTS), 0.005);
    }

    /** A converter to 12 V that stops below 8 V and starts again at 10 V. */
    public static DcConverter converter(String id, double limitAmps) {
        return new DcConverter(
                Bench.tag(id),
                new DcConverter.Rating(12, 0.01, limitAmps),
                0.9,
                new Conversion.InputSide(0.5, 8, 10));
    }

    /** A controller whose logic works from 6 V and needs a tenth of a second to come back. */
    public static SolidStateController controller(
            String id, int channels, double ratedAmps, boolean closedByDefault) {
        SolidStateController.OutputChannel output =
                new SolidStateController.OutputChannel(
                        new Channel.Switching(0.004, ratedAmps * 20),
                        new Channel.Trip(ratedAmps, ProtectorCurves.ELECTRONIC_TRIP, 10),
                        closedByDefault);
        return new SolidStateController(
                Bench.tag(id),
                IntStream.range(0, channels).mapToObj(n -> output).toList(),
                new Demand(Demand.DemandKind.CONSTANT_POWER, 0.2, 12),
                new Tolerance(6, 7, 0.005, 0.1, 40, 1));
    }

    /** A load with two supply inputs {@code a} and {@code b}, combined by diodes inside. */
    public static Load twoInputs(String id, Demand.DemandKind kind, double amps) {
        return new Load(Bench.tag(id), new Demand(kind, amps, 12), Bench.HARDY, List.of("a", "b"));
    }

    /** At least one part of every kind. */
    public static List<Part> everyKind() {
        List<Part> all = new ArrayList<>(chosen());
        Set<PartKind> seen = all.stream().map(Part::kind).collect(Collectors.toSet());
        PartCatalogue.shipped().samples().stream()
                .filter(sample -> !seen.contains(sample.kind()))
                .forEach(all::add);
        return List.copyOf(all);
    }

    private static List<Part> chosen() {
        return List.of(
                alternator("alternator", 14.2, 45, false),
                lead("battery", 20, 0.01, 1),
                lithium("lithium", 10, 1, LENIENT),
                new Breaker(Bench.tag("breaker"), 5, 0.02, ProtectorCurves.FAST_BREAKER),
                new Bus(Bench.tag("bus"), List.of("feed", "tie"), 1e-4),
                new Connector(Bench.tag("connector"), 3, 0.002),
                contactor("contactor", 0.015),
                converter("converter", 10),
                new Diode(Bench.tag("diode"), 1e-5, 0.0275, 0.002),
                fuse("fuse", 5),
                new GroundPoint(Bench.tag("ground"), true, 1e-4),
                new GroundPoint(Bench.tag("block"), false, 1e-4),
                twoInputs("computer", Demand.DemandKind.CONSTANT_POWER, 1.2),
                new Load(
                        Bench.tag("pump"),
                        new Demand(Demand.DemandKind.CONSTANT_POWER, 5, 12),
                        Bench.HARDY,
                        List.of("plus")),
                guard("guard", 16, 0.05),
                crowbar("crowbar", 16, 0.005),
                controller("controller", 2, 10, true),
                new Switch(Bench.tag("switch"), 2, Switch.Throw.SINGLE, 0.005),
                new Switch(Bench.tag("selector"), 1, Switch.Throw.DOUBLE, 0.005),
                new Wire(Bench.tag("wire"), Cable.awg("18").orElseThrow(), 1, 0.02));
    }
}

package stillturning.files;

import static java.util.Objects.requireNonNull;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import stillturning.files.entry.CatalogueEntry.CableEntry;
import stillturning.files.entry.ChannelText;
import stillturning.files.entry.Names;
import stillturning.files.entry.PartEntry;
import stillturning.files.entry.PartEntry.AlternatorEntry;
import stillturning.files.entry.PartEntry.BatteryEntry;
import stillturning.files.entry.PartEntry.BreakerEntry;
import stillturning.files.entry.PartEntry.BusEntry;
import stillturning.files.entry.PartEntry.Chemistry;
import stillturning.files.entry.PartEntry.ConnectorEntry;
import stillturning.files.entry.PartEntry.ContactorEntry;
import stillturning.files.entry.PartEntry.ControllerEntry;
import stillturning.files.entry.PartEntry.ConverterEntry;
import stillturning.files.entry.PartEntry.Curve;
import stillturning.files.entry.PartEntry.DiodeEntry;
import stillturning.files.entry.PartEntry.Excitation;
import stillturning.files.entry.PartEntry.FuseEntry;
import stillturning.files.entry.PartEntry.GroundEntry;
import stillturning.files.entry.PartEntry.GuardEntry;
import stillturning.files.entry.PartEntry.SwitchEntry;
import stillturning.files.entry.PartEntry.Throws;
import stillturning.files.entry.PartEntry.WireEntry;
import stillturning.files.entry.Price;
import stillturning.parts.Alternator;
import stillturning.parts.Battery;
import stillturning.parts.Breaker;
import stillturning.parts.Bus;
import stillturning.parts.Cable;
import stillturning.parts.Connector;
import stillturning.parts.Contactor;
import stillturning.parts.DcConverter;
import stillturning.parts.Diode;
import stillturning.parts.Fuse;
import stillturning.parts.GroundPoint;
import stillturning.parts.OvervoltageGuard;
import stillturning.parts.Part;
import stillturning.parts.ProtectorCurves;
import stillturning.parts.SolidStateController;
import stillturning.parts.SolidStateController.Output;
import stillturning.parts.Switch;
import stillturning.parts.Tag;
import stillturning.parts.Wire;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.Cell.OpenCircuit;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Demand;
import stillturning.parts.element.Generator.Alone;
import stillturning.parts.element.Generator.Regulation;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Tolerance;
import stillturning.parts.element.curve.OutputBySpeed;
import stillturning.parts.element.curve.RestVoltage;
import stillturning.parts.element.curve.TimeCurrentCurve;
import stillturning.quantity.WireGauge;
import stillturning.yaml.notation.Given;

/** Makes parts of complete entries. */
final class PartMaker {

    private static final double SECONDS_PER_HOUR = 3600;
    private static final double SECONDS_PER_MINUTE = 60;
    private static final double NOMINAL_BATTERY_VOLTS = 12;
    private static final int LEAD_ACID_CELLS = 6;
    private static final int LITHIUM_CELLS = 4;

    /** Emission coefficient 1.06 times kT/q at 300 K: a good Schottky diode. A guess. */
    private static final double EMISSION_VOLTS = 0.0275;

    /** A channel's trip forgets its heat in this time. A guess. */
    private static final double CHANNEL_COOLING_SECONDS = 10;

    private static final Map<Curve, TimeCurrentCurve> CURVES =
            Map.of(
                    Curve.BLADE_FUSE, ProtectorCurves.BLADE_FUSE,
                    Curve.HIGH_CURRENT_FUSE, ProtectorCurves.HIGH_CURRENT_FUSE,
                    Curve.THERMAL_BREAKER, ProtectorCurves.THERMAL_BREAKER,
                    Curve.ELECTRONIC_TRIP, ProtectorCurves.ELECTRONIC_TRIP);

    private final double nominalVolts;
    private final CableEntry cable;

    /**
     * @param nominalVolts voltage at which a controller's logic is stated (V)
     */
    PartMaker(double nominalVolts, CableEntry cable) {
        this.nominalVolts = nominalVolts;
        this.cable = cable;
    }

    /**
     * The part.
     *
     * @param studs names of a bus bar's feed studs
     * @throws IllegalArgumentException if its values contradict each other
     */
    Part make(String id, PartEntry entry, String zone, List<String> studs) {
        Part part = ofKind(tag(id, entry, zone), entry, studs);
        part.elements(); // some values are first looked at there
        return part;
    }

    private Part ofKind(Tag tag, PartEntry entry, List<String> studs) {
        if (entry instanceof BatteryEntry battery) {
            return battery(tag, battery);
        }
        if (entry instanceof AlternatorEntry alternator) {
            return alternator(tag, alternator);
        }
        if (entry instanceof BusEntry bus) {
            return new Bus(tag, studs, si(bus.resistance()));
        }
        if (entry instanceof FuseEntry fuse) {
            double rated = si(fuse.rating());
            return new Fuse(tag, rated, si(fuse.drop()) / rated, curve(fuse.curve()));
        }
        if (entry instanceof BreakerEntry breaker) {
            double rated = si(breaker.rating());
            return new Breaker(tag, rated, si(breaker.drop()) / rated, curve(breaker.curve()));
        }
        if (entry instanceof WireEntry wire) {
            return wire(tag, wire);
        }
        return switching(tag, entry);
    }

    private Part switching(Tag tag, PartEntry entry) {
        if (entry instanceof SwitchEntry lever) {
            return lever(tag, lever);
        }
        if (entry instanceof ContactorEntry contactor) {
            return contactor(tag, contactor);
        }
        if (entry instanceof DiodeEntry diode) {
            return diode(tag, diode);
        }
        if (entry instanceof GroundEntry ground) {
            return new GroundPoint(
                    tag, ground.onStructure().orElseThrow(), si(ground.resistance()));
        }
        if (entry instanceof ConnectorEntry connector) {
            return new Connector(tag, connector.pins().orElseThrow(), si(connector.resistance()));
        }
        if (entry instanceof ConverterEntry converter) {
            return converter(tag, converter);
        }
        if (entry instanceof GuardEntry guard) {
            Guard.Trip trip =
                    new Guard.Trip(si(guard.trip()), si(guard.after()), guard.acts().orElseThrow());
            return new OvervoltageGuard(tag, trip, si(guard.resistance()));
        }
        if (entry instanceof ControllerEntry controller) {
            return controller(tag, controller);
        }
        throw new IllegalStateException("no part is made of " + entry.getClass());
    }

    private Tag tag(String id, PartEntry entry, String zone) {
        String label = entry.label().orElseGet(() -> Names.spoken(id));
        Tag.Burden burden =
                entry instanceof WireEntry wire
                        ? wireBurden(wire)
                        : new Tag.Burden(si(entry.mass()), entry.price().orElseThrow().amount());
        return new Tag(id, label, zone, burden);
    }

    private Tag.Burden wireBurden(WireEntry wire) {
        WireGauge gauge = wire.gauge().orElseThrow();
        double metres = si(wire.length());
        double perMetre =
                cable.pricePerMetre().amount()
                        + cable.pricePerMetreAndMm2().amount() * gauge.squareMetres() * 1e6;
        double kilograms =
                size(gauge).kilogramsPerMetre() * metres + 2 * cable.terminalMass().quantity().si();
        double price = perMetre * metres + 2 * cable.terminalPrice().amount();
        return new Tag.Burden(
                wire.mass().map(m -> m.quantity().si()).orElse(kilograms),
                wire.price().map(Price::amount).orElse(price));
    }

    private static Wire wire(Tag tag, WireEntry wire) {
        WireGauge gauge = wire.gauge().orElseThrow();
        Cable size = size(gauge);
        double metres = si(wire.length());
        return new Wire(tag, size, metres, CableSizes.ohmsPerMetre(gauge, size) * metres);
    }

    private static Cable size(WireGauge gauge) {
        return CableSizes.of(gauge)
                .orElseThrow(
                        () ->
                                new IllegalArgumentException(
                                        gauge.name()
                                                + " is not in the table of airframe wires,"
                                                + " which has AWG 24, 22, 20 ... 2, 1, 1/0 ... 4/0"));
    }

    private static Battery battery(Tag tag, BatteryEntry battery) {
        double volts = si(battery.nominal());
        double blocks = volts / NOMINAL_BATTERY_VOLTS;
        if (blocks != 1 && blocks != 2) {
            throw new IllegalArgumentException(
                    "battery: nominal " + volts + " V is neither 12 V nor 24 V");
        }
        boolean lead = battery.chemistry().orElseThrow() == Chemistry.LEAD_ACID;
        RestVoltage curve = lead ? RestVoltage.LEAD_ACID : RestVoltage.LITHIUM_IRON_PHOSPHATE;
        int cells = lead ? LEAD_ACID_CELLS : LITHIUM_CELLS;
        Capacity capacity =
                new Capacity(
                        si(battery.capacity()),
                        si(battery.ratedOver()) / SECONDS_PER_HOUR,
                        battery.peukert().orElseThrow());
        return new Battery(
                        tag,
                        new OpenCircuit(curve, blocks),
                        (int) (cells * blocks),
                        capacity,
                        si(battery.resistance()),
                        si(battery.charge()),
                        battery.management().map(m -> Managements.of(m, blocks)))
                .aged(si(battery.health()));
    }

    private static Alternator alternator(Tag tag, AlternatorEntry alternator) {
        double rated = si(alternator.rating());
        List<OutputBySpeed.Point> points =
                alternator.output().orElseThrow().stream()
                        .map(
                                p ->
                                        new OutputBySpeed.Point(
                                                p.at().quantity().si() / SECONDS_PER_MINUTE,
                                                p.share().quantity().si() * rated))
                        .toList();
        if (si(alternator.dumpClamp()) < si(alternator.setPoint())) {
            throw new IllegalArgumentException(
                    "alternator: dump-clamp "
                            + si(alternator.dumpClamp())
                            + " V is below its set-point "
                            + si(alternator.setPoint())
                            + " V");
        }
        boolean wound = alternator.excitation().orElseThrow() == Excitation.FIELD;
        return new Alternator(
                tag,
                new Regulation(si(alternator.setPoint()), si(alternator.droop())),
                new OutputBySpeed(points),
                si(alternator.fieldResistance()),
                wound ? si(alternator.setPoint()) : 0,
                new Alone(
                        alternator.withoutBattery().orElseThrow(),
                        si(alternator.dumpClamp()),
                        si(alternator.dumpLasts())));
    }

    private static TimeCurrentCurve curve(Optional<Curve> curve) {
        return requireNonNull(CURVES.get(curve.orElseThrow()));
    }

    private static Switch lever(Tag tag, SwitchEntry lever) {
        boolean single = lever.throwing().orElseThrow() == Throws.SINGLE;
        return new Switch(
                tag,
                lever.poles().orElseThrow(),
                single ? Switch.Throw.SINGLE : Switch.Throw.DOUBLE,
                si(lever.resistance()));
    }

    private static Contactor contactor(Tag tag, ContactorEntry contactor) {
        Contactor.Winding winding =
                new Contactor.Winding(
                        si(contactor.coilResistance()),
                        si(contactor.pullIn()),
                        si(contactor.dropOut()),
                        si(contactor.delay()));
        return new Contactor(tag, winding, si(contactor.resistance()));
    }

    private static Diode diode(Tag tag, DiodeEntry diode) {
        double amps = si(diode.at());
        double ohms = si(diode.resistance());
        double junctionVolts = si(diode.drop()) - amps * ohms;
        if (!(junctionVolts > 0)) {
            throw new IllegalArgumentException(
                    "diode: the series resistance alone drops "
                            + amps * ohms
                            + " V, more than the forward voltage");
        }
        return new Diode(
                tag, amps / Math.expm1(junctionVolts / EMISSION_VOLTS), EMISSION_VOLTS, ohms);
    }

    private static DcConverter converter(Tag tag, ConverterEntry converter) {
        DcConverter.Rating rating =
                new DcConverter.Rating(
                        si(converter.output()), si(converter.droop()), si(converter.limit()));
        Conversion.Input input =
                new Conversion.Input(
                        si(converter.idle()), si(converter.minimum()), si(converter.restart()));
        return new DcConverter(tag, rating, si(converter.efficiency()), input);
    }

    private SolidStateController controller(Tag tag, ControllerEntry controller) {
        Demand logic =
                new Demand(Demand.Kind.CONSTANT_POWER, si(controller.logicDraws()), nominalVolts);
        double minimum = si(controller.logicMinimum());
        Tolerance tolerance =
                new Tolerance(
                        minimum,
                        minimum,
                        si(controller.logicRideThrough()),
                        si(controller.logicBoot()),
                        Double.POSITIVE_INFINITY,
                        0);
        List<Output> outputs =
                controller.channels().orElseThrow().stream()
                        .map(c -> output(c, controller))
                        .toList();
        return new SolidStateController(tag, outputs, logic, tolerance);
    }

    private static Output output(ChannelText channel, ControllerEntry controller) {
        double rated = channel.rating().quantity().si();
        return new Output(
                new Channel.Switching(si(controller.resistance()), rated * si(controller.limit())),
                new Channel.Trip(rated, ProtectorCurves.ELECTRONIC_TRIP, CHANNEL_COOLING_SECONDS),
                channel.onByDefault());
    }

    private static double si(Optional<Given> given) {
        return given.orElseThrow().quantity().si();
    }
}

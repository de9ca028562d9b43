package stillturning.story.device.plant;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.Resistive;
import stillturning.parts.Load;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Protector;
import stillturning.parts.element.Rectifier;
import stillturning.story.Story.Feed;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.battery.CellDevice;
import stillturning.story.device.battery.EqualisingDevice;
import stillturning.story.device.battery.ManagementDevice;
import stillturning.story.device.battery.OverchargeDevice;

/** Every device of a circuit, made from its elements. */
public final class Plant {

    private final Circuit circuit;
    private final BranchLayout layout;
    private final Situation now;
    private final Map<String, CoilDevice> coils = new LinkedHashMap<>();
    private final Map<String, SupplyDevice> supplies = new LinkedHashMap<>();
    private final Map<String, SupplyDevice> loads = new LinkedHashMap<>();
    private final Map<String, Device> devices = new LinkedHashMap<>();
    private final SourceReach reach;

    public Plant(Circuit circuit, BranchLayout layout, Situation now) {
        this.circuit = circuit;
        this.now = now;
        for (Seat seat : layout.seats) {
            Element element = seat.placed().element();
            if (element instanceof Coil coil) {
                coils.put(seat.placed().name(), coil(seat, coil));
            } else if (element instanceof Consumer consumer) {
                SupplyDevice supply = supply(seat, consumer);
                supplies.put(seat.placed().name(), supply);
                if (!supply.insidePart()) {
                    loads.put(supply.part(), supply);
                }
            }
        }
        this.layout = layout;
        this.reach = new SourceReach(circuit, layout, now);
        layout.seats.forEach(this::add);
    }

    /** The part that a branch belongs to, if there is one. */
    public Optional<String> partAt(int branch) {
        return layout.partAt(branch);
    }

    public Circuit circuit() {
        return circuit;
    }

    /** All devices by a name that is the same in every run, in the order of the parts. */
    public Map<String, Device> devices() {
        return devices;
    }

    public <D> Stream<D> all(Class<D> kind) {
        return devices.values().stream().filter(kind::isInstance).map(kind::cast);
    }

    /** Supplies of the study's loads by load. */
    public Map<String, SupplyDevice> loads() {
        return loads;
    }

    /**
     * Every source–input pair between which current can flow out and back. A source shorted to the
     * structure feeds nobody.
     */
    public Set<Feed> feeds() {
        return reach.feeds();
    }

    /** Whether a load, or every piece of electronics inside a part, works. */
    public BooleanSupplier running(String part) {
        List<SupplyDevice> inside =
                supplies.values().stream().filter(s -> s.part().equals(part)).toList();
        return () -> !inside.isEmpty() && inside.stream().allMatch(SupplyDevice::works);
    }

    /** What grows warm, in the order of the parts. */
    public List<Stateful> heats() {
        List<Stateful> heats = new ArrayList<>();
        for (Device device : devices.values()) {
            if (device instanceof ProtectorDevice protector) {
                heats.add(protector.heat());
            } else if (device instanceof ChannelDevice channel) {
                heats.add(channel.heat());
            } else if (device instanceof WireDevice wire) {
                heats.add(wire.insulation());
                heats.add(wire.copper());
            } else if (device instanceof CellDevice cell) {
                cell.warmth().ifPresent(heats::add);
            } else if (device instanceof OverchargeDevice overcharge) {
                heats.add(overcharge);
            }
        }
        return heats;
    }

    private void add(Seat seat) {
        List<Device> made = made(seat);
        for (int i = 0; i < made.size(); i++) {
            devices.put(seat.placed().name() + (i == 0 ? "" : "+" + i), made.get(i));
        }
    }

    private List<Device> made(Seat seat) {
        Placed placed = seat.placed();
        Element element = placed.element();
        if (element instanceof Cell cell) {
            return cell(seat, cell);
        } else if (element instanceof Conversion conversion) {
            return conversion(seat, conversion);
        } else if (element instanceof Consumer consumer) {
            SupplyDevice supply = supplyOf(placed);
            Device withstand = new WithstandDevice(supply, consumer.tolerance(), now);
            return supply.duty() < 1 && !now.setting.blocks().even()
                    ? List.of(supply, withstand, new BlockDevice(supply, now.setting.blocks()))
                    : List.of(supply, withstand);
        }
        return List.of(single(seat, element));
    }

    private Device single(Seat seat, Element element) {
        Placed placed = seat.placed();
        int branch = seat.branch();
        if (element instanceof Conductor conductor) {
            return metal(seat, conductor);
        } else if (element instanceof Rectifier diode) {
            return new MetalDevice(
                    branch,
                    new DiodeDrop(diode.saturationAmps(), diode.emissionVolts(), diode.ohms()));
        } else if (element instanceof Contact contact) {
            return new ContactDevice(placed, contact, branch, coilOf(placed, contact), now);
        } else if (element instanceof Protector protector) {
            return new ProtectorDevice(placed, protector, branch, now);
        } else if (element instanceof Channel channel) {
            return new ChannelDevice(placed, channel, branch, logicOf(placed, channel), now);
        } else if (element instanceof Generator generator) {
            return generator(seat, generator);
        } else if (element instanceof Guard guard) {
            return new GuardDevice(
                    placed,
                    guard,
                    branch,
                    circuit.net(placed.part(), guard.sense()),
                    circuit.net(placed.part(), guard.senseReturn()),
                    now);
        }
        CoilDevice coil = coils.get(placed.name());
        if (coil == null) {
            throw new IllegalStateException("no device for " + placed.name());
        }
        return coil;
    }

    private Device metal(Seat seat, Conductor conductor) {
        return conductor
                .heating()
                .<Device>map(
                        heating ->
                                new WireDevice(
                                        seat.placed(), conductor, heating, seat.branch(), now))
                .orElseGet(() -> new MetalDevice(seat.branch(), new Resistive(conductor.ohms())));
    }

    private List<Device> cell(Seat seat, Cell cell) {
        CellDevice device = new CellDevice(seat.placed(), cell, seat.branch(), now);
        List<Device> made = new ArrayList<>(List.of(device));
        cell.management().ifPresent(m -> made.add(new ManagementDevice(device, m, now)));
        made.add(new OverchargeDevice(device, now));
        made.add(
                new EqualisingDevice(
                        device, () -> all(CellDevice.class).toList(), reach::reaches, now));
        return made;
    }

    private List<Device> conversion(Seat seat, Conversion conversion) {
        int output = seat.branch() + 1;
        ConversionDevice input =
                new ConversionDevice(seat.placed(), conversion, seat.branch(), output, now);
        return List.of(input, new ConversionDevice.Output(input, output));
    }

    private GeneratorDevice generator(Seat seat, Generator generator) {
        Optional<CoilDevice> field =
                Optional.ofNullable(coils.get(seat.placed().part() + "/" + generator.field()));
        return new GeneratorDevice(
                seat.placed(),
                generator,
                seat.branch(),
                field,
                () -> reach.batteryJoinedTo(seat.placed().from()),
                now);
    }

    private CoilDevice coil(Seat seat, Coil coil) {
        boolean movesContacts =
                circuit.placed().stream()
                        .anyMatch(
                                p ->
                                        p.part().equals(seat.placed().part())
                                                && p.element() instanceof Contact);
        return new CoilDevice(seat.placed(), coil, seat.branch(), movesContacts, now);
    }

    private SupplyDevice supply(Seat seat, Consumer consumer) {
        return new SupplyDevice(
                seat.placed(),
                consumer,
                consumer.name().equals(Load.WORK)
                        ? now.aircraft.load(seat.placed().part())
                        : Optional.empty(),
                seat.branch(),
                now);
    }

    private SupplyDevice supplyOf(Placed placed) {
        SupplyDevice supply = supplies.get(placed.name());
        if (supply == null) {
            throw new IllegalStateException("no supply for " + placed.name());
        }
        return supply;
    }

    private Optional<CoilDevice> coilOf(Placed placed, Contact contact) {
        return contact.control() instanceof stillturning.parts.element.Control.ByCoil by
                ? Optional.ofNullable(coils.get(placed.part() + "/" + by.coil()))
                : Optional.empty();
    }

    private Optional<SupplyDevice> logicOf(Placed placed, Channel channel) {
        return Optional.ofNullable(supplies.get(placed.part() + "/" + channel.logic()));
    }
}

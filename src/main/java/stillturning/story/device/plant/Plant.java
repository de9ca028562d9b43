package stillturning.story.device.plant;

import static java.util.Objects.requireNonNull;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import stillturning.model.Circuit;
import stillturning.model.Circuit.Placed;
import stillturning.model.LoadNeed;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.Resistive;
import stillturning.parts.Load;
import stillturning.parts.element.Capacitor;
import stillturning.parts.element.Cell;
import stillturning.parts.element.Channel;
import stillturning.parts.element.Coil;
import stillturning.parts.element.Conductor;
import stillturning.parts.element.Consumer;
import stillturning.parts.element.Contact;
import stillturning.parts.element.Control;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Generator;
import stillturning.parts.element.Guard;
import stillturning.parts.element.Protector;
import stillturning.parts.element.Rectifier;
import stillturning.parts.element.curve.WireHeating;
import stillturning.story.Story.Feed;
import stillturning.story.StoryEvent;
import stillturning.story.device.BranchDevice;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;
import stillturning.story.device.Stateful;
import stillturning.story.device.battery.CapacitorDevice;
import stillturning.story.device.battery.CellDevice;
import stillturning.story.device.battery.EqualisingDevice;
import stillturning.story.device.battery.ManagementDevice;
import stillturning.story.device.battery.OverchargeDevice;
import stillturning.story.device.battery.Store;

/** Every device of a circuit, made from its elements. */
public final class Plant {

    private final Map<String, LoadNeed> needs = new HashMap<>();
    private final Circuit circuit;
    private final BranchLayout layout;
    private final Situation now;
    private final Map<String, CoilDevice> coils = new LinkedHashMap<>();
    private final Map<String, SupplyDevice> supplies = new LinkedHashMap<>();
    private final Map<String, SupplyDevice> loads = new LinkedHashMap<>();
    private final Map<String, Device> devices;
    private final List<BranchDevice> branchDevices = new ArrayList<>();
    private final List<CellDevice> cells = new ArrayList<>();
    private final List<GeneratorDevice> generators = new ArrayList<>();
    private final List<Store> stores = new ArrayList<>();
    private final SourceReach reach;
    private final Steadying steadying;

    public Plant(Circuit circuit, BranchLayout layout, Situation now) {
        this.circuit = circuit;
        this.devices = new LinkedHashMap<>(3 * layout.seats.size());
        this.now = now;
        layout.seats.forEach(this::addCoil);
        now.aircraft.loads().forEach(need -> needs.put(need.id(), need));
        layout.seats.forEach(this::addSupply);
        this.layout = layout;
        this.reach = new SourceReach(circuit, layout, now);
        this.steadying = new Steadying(layout, now);
        layout.seats.forEach(this::add);
    }

    /** The part that a branch belongs to, if there is one. */
    public Optional<String> partAt(int branch) {
        return layout.partAt(branch);
    }

    /** How many branches the network has. */
    public int branches() {
        return layout.from.length;
    }

    public Circuit circuit() {
        return circuit;
    }

    /** All devices by a name that is the same in every run, in the order of the parts. */
    public Map<String, Device> devices() {
        return devices;
    }

    /** All that are branches of the network, in the order of the parts. */
    public List<BranchDevice> branchDevices() {
        return branchDevices;
    }

    /** All batteries, in the order of the parts. */
    public List<CellDevice> cells() {
        return cells;
    }

    /** All alternators, in the order of the parts. */
    public List<GeneratorDevice> generators() {
        return generators;
    }

    /** All batteries and capacitors, in the order of the parts. */
    public List<Store> stores() {
        return stores;
    }

    /** Supplies of the study's loads by load. */
    public Map<String, SupplyDevice> loads() {
        return loads;
    }

    /** Has all coils let go, as before anything was switched on. */
    public void release() {
        coils.values().forEach(CoilDevice::release);
    }

    /**
     * Why contacts are open here that are held closed elsewhere.
     *
     * @param there the same plant in another state
     * @param pulledIn parts that were closed here for a while
     */
    public List<StoryEvent> staysOpen(Plant there, Set<String> pulledIn) {
        return there.coils.entrySet().stream()
                .filter(coil -> coil.getValue().holds())
                .map(coil -> requireNonNull(coils.get(coil.getKey()), coil.getKey()))
                .filter(coil -> !pulledIn.contains(coil.part()))
                .map(CoilDevice::staysOpen)
                .toList();
    }

    /**
     * Every source–input pair between which current can flow out and back. A source shorted to the
     * structure feeds nobody.
     */
    public Set<Feed> feeds() {
        return reach.feeds();
    }

    /** Alternators of which only the margin of a guess says whether the circuit steadies them. */
    public Set<String> doubtfullySteadied() {
        return steadying.doubtful();
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
        devices.values().forEach(device -> heats.addAll(device.heats()));
        return heats;
    }

    private void addCoil(Seat seat) {
        if (seat.placed().element() instanceof Coil coil) {
            coils.put(seat.placed().name(), coil(seat, coil));
        }
    }

    private void addSupply(Seat seat) {
        if (seat.placed().element() instanceof Consumer consumer) {
            SupplyDevice supply = supply(seat, consumer);
            supplies.put(seat.placed().name(), supply);
            if (!supply.insidePart()) {
                loads.put(supply.part(), supply);
            }
        }
    }

    private void add(Seat seat) {
        List<Device> made = made(seat);
        for (int i = 0; i < made.size(); i++) {
            String name = seat.placed().name();
            devices.put(i == 0 ? name : name + "+" + i, made.get(i));
            sort(made.get(i));
        }
    }

    private void sort(Device device) {
        if (device instanceof BranchDevice branch) {
            branchDevices.add(branch);
        }
        if (device instanceof Store store) {
            stores.add(store);
        }
        if (device instanceof CellDevice cell) {
            cells.add(cell);
        } else if (device instanceof GeneratorDevice generator) {
            generators.add(generator);
        }
    }

    private List<Device> made(Seat seat) {
        return seat.placed().element().accept(new DevicesOf(seat));
    }

    /** The devices of the element in a seat, the one that lays its branch first. */
    private final class DevicesOf implements Element.Visitor<List<Device>> {
        private final Seat seat;
        private final Placed placed;
        private final int branch;

        DevicesOf(Seat seat) {
            this.seat = seat;
            this.placed = seat.placed();
            this.branch = seat.branch();
        }

        @Override
        public List<Device> visit(Capacitor capacitor) {
            BooleanSupplier held = () -> reach.sourceJoinedTo(placed.from());
            return List.of(new CapacitorDevice(placed, capacitor, branch, held, now));
        }

        @Override
        public List<Device> visit(Cell cell) {
            return cell(seat, cell);
        }

        @Override
        public List<Device> visit(Channel channel) {
            Optional<SupplyDevice> logic = logicOf(placed, channel);
            return List.of(new ChannelDevice(placed, channel, branch, logic, now));
        }

        @Override
        public List<Device> visit(Coil coil) {
            return List.of(requireNonNull(coils.get(placed.name()), placed.name()));
        }

        @Override
        public List<Device> visit(Conversion conversion) {
            return conversion(seat, conversion);
        }

        @Override
        public List<Device> visit(Conductor conductor) {
            return List.of(metal(seat, conductor));
        }

        @Override
        public List<Device> visit(Consumer consumer) {
            SupplyDevice supply = requireNonNull(supplies.get(placed.name()), placed.name());
            List<Device> made = new ArrayList<>();
            made.add(supply);
            made.add(new WithstandDevice(supply, consumer.tolerance(), now));
            if (isStarter(supply)) {
                made.add(new RunOnDevice(supply, now));
            }
            if (supply.duty() < 1 && !now.setting.blocks().even()) {
                made.add(new BlockDevice(supply, now.setting.blocks()));
            }
            now.setting
                    .start()
                    .one()
                    .filter(start -> start.load().equals(supply.part()) && !supply.insidePart())
                    .ifPresent(start -> made.add(new StartDevice(supply, start, now)));
            return made;
        }

        @Override
        public List<Device> visit(Contact contact) {
            Optional<CoilDevice> coil = coilOf(placed, contact);
            return List.of(new ContactDevice(placed, contact, branch, coil, now));
        }

        @Override
        public List<Device> visit(Generator generator) {
            return List.of(generator(seat, generator));
        }

        @Override
        public List<Device> visit(Guard guard) {
            int sense = circuit.net(placed.part(), guard.sense());
            int senseReturn = circuit.net(placed.part(), guard.senseReturn());
            return List.of(new GuardDevice(placed, guard, branch, sense, senseReturn, now));
        }

        @Override
        public List<Device> visit(Protector protector) {
            return List.of(new ProtectorDevice(placed, protector, branch, now));
        }

        @Override
        public List<Device> visit(Rectifier diode) {
            return List.of(
                    new MetalDevice(
                            branch,
                            new DiodeDrop(
                                    diode.saturationAmps(), diode.emissionVolts(), diode.ohms())));
        }
    }

    private boolean isStarter(SupplyDevice supply) {
        Optional<String> starter = now.aircraft.engine().starting().starter();
        return !supply.insidePart() && starter.equals(Optional.of(supply.part()));
    }

    private Device metal(Seat seat, Conductor conductor) {
        Optional<WireHeating> heating = conductor.heating();
        return heating.isPresent()
                ? new WireDevice(seat.placed(), conductor, heating.get(), seat.branch(), now)
                : new MetalDevice(seat.branch(), new Resistive(conductor.ohms()));
    }

    private List<Device> cell(Seat seat, Cell cell) {
        CellDevice device = new CellDevice(seat.placed(), cell, seat.branch(), now);
        List<Device> made = new ArrayList<>(List.of(device));
        cell.management().ifPresent(m -> made.add(new ManagementDevice(device, m, now)));
        made.add(new OverchargeDevice(device, now));
        made.add(new EqualisingDevice(device, () -> cells, reach::reaches, now));
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
                () -> steadying.at(seat.branch()),
                () ->
                        field.map(f -> reach.anotherFeeds(f.from(), f.to(), seat.branch()))
                                .orElse(false),
                now);
    }

    private CoilDevice coil(Seat seat, Coil coil) {
        boolean moves = movesContacts(seat.placed().part());
        return new CoilDevice(seat.placed(), coil, seat.branch(), moves, now);
    }

    private boolean movesContacts(String part) {
        for (Placed placed : circuit.placed()) {
            if (placed.element() instanceof Contact && placed.part().equals(part)) {
                return true;
            }
        }
        return false;
    }

    private SupplyDevice supply(Seat seat, Consumer consumer) {
        return new SupplyDevice(
                seat.placed(),
                consumer,
                consumer.name().equals(Load.WORK)
                        ? Optional.ofNullable(needs.get(seat.placed().part()))
                        : Optional.empty(),
                seat.branch(),
                now);
    }

    private Optional<CoilDevice> coilOf(Placed placed, Contact contact) {
        return contact.control() instanceof Control.ByCoil by
                ? Optional.ofNullable(coils.get(placed.part() + "/" + by.coil()))
                : Optional.empty();
    }

    private Optional<SupplyDevice> logicOf(Placed placed, Channel channel) {
        return Optional.ofNullable(supplies.get(placed.part() + "/" + channel.logic()));
    }
}

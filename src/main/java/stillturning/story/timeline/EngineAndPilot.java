package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BooleanSupplier;
import java.util.function.IntUnaryOperator;
import stillturning.model.Circuit;
import stillturning.model.Cockpit;
import stillturning.model.Cue;
import stillturning.model.Procedure;
import stillturning.model.Terminal;
import stillturning.story.Setting;
import stillturning.story.device.Device;
import stillturning.story.device.EventWords;
import stillturning.story.device.Situation;
import stillturning.story.device.plant.GeneratorDevice;
import stillturning.story.device.plant.Plant;
import stillturning.story.device.plant.SupplyDevice;
import stillturning.story.timeline.CueDevice.Sensing;

/** Engine, cues and procedures of a run. */
final class EngineAndPilot {

    /** An alternator that gives less than this is out (A). Common practice, no source. */
    private static final double OUT_AMPS = 0.5;

    /** What a voltage is about: the network as a whole. */
    private static final String NOBODY = "";

    private final Plant plant;
    private final Situation now;
    private final Circuit circuit;
    private final Map<String, Device> devices = new LinkedHashMap<>();
    private final EngineDevice engine;
    private final StarterKey key;
    private final Optional<FlightDevice> flight;
    private final Set<String> dark;

    EngineAndPilot(Plant plant, Cockpit cockpit, FlightConditions scene, Situation now) {
        this.plant = plant;
        this.now = now;
        this.circuit = plant.circuit();
        this.dark = scene.dark();
        this.engine = new EngineDevice(plant.loads(), now);
        this.key = new StarterKey(engine, now);
        this.flight = scene.ahead().map(ahead -> new FlightDevice(ahead, now));
        devices.put("engine", engine);
        devices.put("starter key", key);
        flight.ifPresent(f -> devices.put("flight", f));
        Map<String, CueDevice> cues = new LinkedHashMap<>();
        for (Cue cue : cockpit.cues()) {
            CueDevice device = cue(cue);
            cues.put(cue.name(), device);
            devices.put("cue " + cue.name(), device);
        }
        MoveQueue hands = new MoveQueue(cockpit, plant.branches(), now);
        devices.put("hands", hands);
        if (!scene.drill().isEmpty()) {
            devices.put("drill", new DrillDevice(scene.drill(), 0, hands, now));
        }
        Setting.Act act = now.setting.act();
        if (!act.moves().isEmpty()) {
            devices.put("act", new DrillDevice(act.moves(), act.fromSeconds(), hands, now));
        }
        for (Procedure procedure : cockpit.procedures()) {
            now.movable.addAll(procedure.moves().keySet());
            List<CueDevice> starting = new ArrayList<>();
            procedure.when().forEach(name -> starting.add(cueNamed(name, cues)));
            devices.put(
                    "procedure " + procedure.name(),
                    new ProcedureDevice(procedure, starting, automatic(procedure), hands, now));
        }
    }

    EngineDevice engine() {
        return engine;
    }

    /** The flight goes on from here. */
    void fly() {
        flight.ifPresent(FlightDevice::begin);
    }

    boolean landed() {
        return flight.map(FlightDevice::landed).orElse(false);
    }

    Map<String, Device> devices() {
        return devices;
    }

    boolean acted() {
        return key.pressed()
                || devices.values().stream()
                        .anyMatch(d -> d instanceof ProcedureDevice procedure && procedure.done());
    }

    List<String> showing() {
        return devices.values().stream()
                .filter(d -> d instanceof CueDevice cue && cue.shows())
                .map(d -> ((CueDevice) d).name())
                .toList();
    }

    private static CueDevice cueNamed(String name, Map<String, CueDevice> cues) {
        CueDevice cue = cues.get(name);
        if (cue == null) {
            throw new IllegalArgumentException("no cue is called " + name);
        }
        return cue;
    }

    private CueDevice cue(Cue cue) {
        return new CueDevice(
                cue,
                cue.sign().accept(new SensingOf(minus(cue.shownBy()))),
                seen(cue.shownBy()),
                !dark.contains(cue.name()),
                now);
    }

    private BooleanSupplier automatic(Procedure procedure) {
        return procedure.execution().automatic().map(plant::running).orElse(() -> true);
    }

    /** A display that a failure took away shows no more than one that is dark. */
    private BooleanSupplier seen(Optional<String> shownBy) {
        if (shownBy.isEmpty()) {
            return () -> true;
        }
        SupplyDevice display = plant.loads().get(shownBy.get());
        return display == null ? () -> false : display::works;
    }

    /**
     * The net that a voltmeter's minus is on, by that of its plus: that of the load that shows it,
     * and where returns meet for a lamp of its own, whose return no file states.
     */
    private IntUnaryOperator minus(Optional<String> shownBy) {
        SupplyDevice display = shownBy.map(plant.loads()::get).orElse(null);
        return display == null ? circuit.returns()::of : plus -> display.placed().to();
    }

    /** What a sign watches, and what to say of it. */
    private final class SensingOf implements Cue.Visitor<Sensing> {
        private final IntUnaryOperator minusOf;

        SensingOf(IntUnaryOperator minusOf) {
            this.minusOf = minusOf;
        }

        @Override
        public Sensing visit(Cue.LowVolts low) {
            int net = net(low.at());
            int minus = minusOf.applyAsInt(net);
            return new Sensing(
                    () -> now.voltsBetween(net, minus) - low.volts(),
                    low.seconds(),
                    () -> low.at().part() + " is below " + EventWords.volts(low.volts()),
                    NOBODY);
        }

        @Override
        public Sensing visit(Cue.HighVolts high) {
            int net = net(high.at());
            int minus = minusOf.applyAsInt(net);
            return new Sensing(
                    () -> high.volts() - now.voltsBetween(net, minus),
                    high.seconds(),
                    () -> high.at().part() + " is above " + EventWords.volts(high.volts()),
                    NOBODY);
        }

        @Override
        public Sensing visit(Cue.AlternatorOut out) {
            List<GeneratorDevice> generators = generators(out.alternator());
            return new Sensing(
                    () -> amps(generators) - OUT_AMPS,
                    0,
                    () -> out.alternator() + " delivers nothing",
                    out.alternator());
        }

        @Override
        public Sensing visit(Cue.LoadStops stops) {
            return new Sensing(
                    () -> works(stops.load()) ? Device.NOT_NOW : Device.NOW,
                    0,
                    () -> stops.load() + " has stopped",
                    stops.load());
        }

        @Override
        public Sensing visit(Cue.EngineStops stops) {
            return new Sensing(
                    () -> engine.stopped() ? Device.NOW : Device.NOT_NOW,
                    0,
                    () -> "the engine has stopped",
                    "engine");
        }
    }

    private int net(Terminal terminal) {
        return circuit.net(terminal.part(), terminal.name());
    }

    private List<GeneratorDevice> generators(String part) {
        return plant.generators().stream().filter(g -> g.placed().part().equals(part)).toList();
    }

    private static double amps(List<GeneratorDevice> generators) {
        double amps = 0;
        for (GeneratorDevice generator : generators) {
            amps += generator.amps();
        }
        return amps;
    }

    private boolean works(String load) {
        SupplyDevice supply = plant.loads().get(load);
        return supply != null && (supply.works() || !supply.wanted());
    }
}

package stillturning.story.device.plant;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import stillturning.model.EngineLogic;
import stillturning.model.Phase;
import stillturning.network.NoOperatingPoint;
import stillturning.network.NodalSolver;
import stillturning.network.law.BranchLaw;
import stillturning.story.FirstSign;
import stillturning.story.MotorStart;
import stillturning.story.device.Device;
import stillturning.story.device.Situation;

/**
 * Asks at the instants of a story at which it can matter what the start of a motor would do, and
 * remembers the moment at which it does the engine most harm. It is asked only in states that last:
 * a start that falls into the milliseconds of another event is two rare moments at once.
 */
public final class WorstStart {

    /**
     * While a battery runs down and nothing happens, a start is asked about after so many parts of
     * the time to land, and of the time since the failure where that is longer.
     */
    private static final int PARTS = 10;

    /** ... but not more often than this (s). */
    private static final double LEAST_SECONDS = 60;

    /** It starts so long after what brought the moment about, never at the same instant (s). */
    private static final double AFTER_SECONDS = 1e-3;

    /** A moment is only worse if it leaves less than this share of what another one left. */
    private static final double WORSE = 0.99;

    private final Plant plant;
    private final Situation now;
    private final EngineLogic needs;
    private final List<String> needed;
    private final List<SupplyDevice> motors;
    private final boolean held;
    private final GeneratorDevice[] generators;
    private final BranchLaw[] generating;
    private final BranchLaw[] standing;
    private final double enoughSeconds;
    private final Supplier<Optional<FirstSign>> signs;
    private final Device[] devices;

    private final NodalSolver real;
    private final BranchLaw[] supposed;
    private final Map<SupplyDevice, NodalSolver> starting = new HashMap<>();
    private final Map<SupplyDevice, NodalSolver> running = new HashMap<>();

    private final Map<String, Moment> first = new LinkedHashMap<>();
    private final Map<String, Moment> deepest = new LinkedHashMap<>();
    private int events = -1;
    private double nextSeconds;
    private double signSeconds = Double.POSITIVE_INFINITY;

    /**
     * A moment at which a start does harm.
     *
     * @param plenty lowest voltage of what the engine needs, in shares of its least
     */
    private record Moment(double seconds, double plenty) {}

    /**
     * @param held whether the phase goes on without end: the later ones then come all the same, and
     *     what is switched on in them is switched on in this one
     * @param enoughSeconds time to get down from the first sign: what starts later starts on the
     *     ground (s)
     * @param signs the first sign that there was until now
     */
    public WorstStart(
            Plant plant,
            Situation now,
            boolean held,
            double enoughSeconds,
            Supplier<Optional<FirstSign>> signs) {
        this.plant = plant;
        this.now = now;
        this.held = held;
        this.enoughSeconds = enoughSeconds;
        this.signs = signs;
        this.needs = now.aircraft.engine().logic();
        this.needed = needs.loads();
        this.motors = plant.loads().values().stream().filter(SupplyDevice::mayStart).toList();
        this.generators = plant.generators().toArray(GeneratorDevice[]::new);
        this.generating = new BranchLaw[generators.length];
        this.standing = new BranchLaw[generators.length];
        this.real = now.solver;
        this.supposed = new BranchLaw[plant.branches()];
        this.devices =
                plant.devices().values().stream().filter(Device::acts).toArray(Device[]::new);
    }

    /** The first moment of each motor at which its start harms the engine, and the deepest one. */
    public List<MotorStart.Of> harmful() {
        return Stream.of(first, deepest)
                .flatMap(moments -> moments.entrySet().stream())
                .map(e -> new MotorStart.Of(e.getKey(), e.getValue().seconds + AFTER_SECONDS))
                .distinct()
                .toList();
    }

    /** Asks about this instant, if it is due. The network is solved and is left as it is. */
    public void look() {
        if (motors.isEmpty() || !due() || !needs.runsOn(this::works)) {
            return;
        }
        List<SupplyDevice> asked = motors.stream().filter(m -> m.mayStart() && isUsed(m)).toList();
        if (asked.isEmpty()) {
            return;
        }
        for (int i = 0; i < generators.length; i++) {
            generating[i] = now.solver.law(generators[i].branch());
            standing[i] = generators[i].standing();
        }
        asked.forEach(this::ask);
        now.solver = real;
    }

    /** When the next instant is due at the latest (s); infinite where none is. */
    public double nextSeconds() {
        return motors.isEmpty() || nextSeconds <= now.seconds || landed(nextSeconds)
                ? Double.POSITIVE_INFINITY
                : nextSeconds;
    }

    private boolean landed(double seconds) {
        return seconds > Math.min(now.seconds, signSeconds) + enoughSeconds;
    }

    /** After each event; and though nothing happens: a battery may be softer by then. */
    private boolean due() {
        boolean happened = now.journal.size() != events;
        if (happened) {
            signSeconds = signs.get().map(FirstSign::seconds).orElse(Double.POSITIVE_INFINITY);
            events = now.journal.size();
        }
        boolean due = !landed(now.seconds) && (happened || now.seconds >= nextSeconds);
        if (due) {
            double apart = Math.max(enoughSeconds, now.seconds) / PARTS;
            nextSeconds = now.seconds + Math.max(LEAST_SECONDS, apart);
        }
        return due;
    }

    private boolean isUsed(SupplyDevice motor) {
        if (motor.runsIn(now.phase) || !held) {
            return motor.runsIn(now.phase);
        }
        List<Phase> phases = now.aircraft.phases();
        List<Phase> later = phases.subList(phases.indexOf(now.phase) + 1, phases.size());
        return later.stream().anyMatch(motor::runsIn);
    }

    private void ask(SupplyDevice motor) {
        double plenty = 0;
        boolean harms;
        try {
            suppose(standing, motor.branch(), motor.startLaw());
            solve(starting, motor);
            harms = harms(motor.inrush().seconds());
            plenty = plenty();
            if (!harms && !needs.runsOn(load -> bears(load, Double.POSITIVE_INFINITY))) {
                suppose(generating, motor.branch(), motor.runLaw());
                solve(running, motor);
                harms = harms(motor.runSeconds());
                plenty = plenty();
            }
        } catch (NoOperatingPoint unsolved) {
            // the story that is then played says itself what cannot be computed
            harms = true;
        }
        if (harms) {
            remember(motor.part(), plenty);
        }
    }

    /** Lays down what alternators and a motor would do; all others do what they do. */
    private void suppose(BranchLaw[] ofGenerators, int motor, BranchLaw law) {
        for (int branch = 0; branch < supposed.length; branch++) {
            supposed[branch] = real.law(branch);
        }
        for (int i = 0; i < generators.length; i++) {
            supposed[generators[i].branch()] = ofGenerators[i];
        }
        supposed[motor] = law;
    }

    /** Each motor is asked about again and again while little changes: it keeps its solvers. */
    private void solve(Map<SupplyDevice, NodalSolver> solvers, SupplyDevice motor)
            throws NoOperatingPoint {
        NodalSolver solver = solvers.computeIfAbsent(motor, m -> real.another());
        for (int branch = 0; branch < supposed.length; branch++) {
            solver.law(branch, supposed[branch]);
        }
        now.solver = solver;
        solver.solve();
    }

    private void remember(String motor, double plenty) {
        Moment moment = new Moment(now.seconds, plenty);
        first.putIfAbsent(motor, moment);
        Moment known = deepest.get(motor);
        if (known == null || plenty < WORSE * known.plenty) {
            deepest.put(motor, moment);
        }
    }

    /** Whether the present currents and voltages, if they last so long (s), reach the engine. */
    private boolean harms(double seconds) {
        if (!needs.runsOn(load -> bears(load, seconds))) {
            return true;
        }
        for (Device device : devices) {
            if (device.yieldsWithin(seconds)) {
                return true;
            }
        }
        return false;
    }

    private boolean works(String load) {
        SupplyDevice supply = plant.loads().get(load);
        return supply != null && supply.works();
    }

    private boolean bears(String load, double seconds) {
        SupplyDevice supply = plant.loads().get(load);
        return supply != null && supply.bears(seconds);
    }

    private double plenty() {
        double least = Double.POSITIVE_INFINITY;
        for (String load : needed) {
            SupplyDevice supply = plant.loads().get(load);
            least = supply != null && supply.works() ? Math.min(least, supply.plenty()) : least;
        }
        return least;
    }
}

package stillturning.network;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/**
 * Time an operating point of the fast path. Run the main class {@code org.openjdk.jmh.Main} on the
 * test class path with {@code NodalSolverBenchmark -prof gc}: the profiler's bytes per call must be
 * 0 for {@code warmAfterOneLoad} and {@code warmAfterNewBattery} but for the law that is made.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
public class NodalSolverBenchmark {
    /** Size of the network, net 0 included. */
    @Param({"60", "150", "400"})
    public int nets;

    private NodalSolver solver = AircraftNetwork.of(60).solver();
    private int load;
    private int turn;
    private double[] zero = new double[60];
    private final BranchLaw[] loads = {new Resistive(20.0), new Resistive(60.0)};
    private final BranchLaw[] switches = {new Resistive(20.0), Open.CIRCUIT};
    private final BranchLaw[] batteries = new BranchLaw[64];
    private StarMesh mesh = new StarMesh(Topology.of(1, new int[0], new int[0]));
    private double[] siemens = new double[0];
    private double[] amps = new double[1];
    private double[] volts = new double[1];

    /** Builds and solves once. */
    @Setup
    public void build() throws NoOperatingPoint {
        AircraftNetwork aircraft = AircraftNetwork.of(nets);
        solver = aircraft.solver();
        load = aircraft.firstLoad();
        zero = new double[nets];
        for (int k = 0; k < batteries.length; k++) {
            batteries[k] = new SourceBehindOhms(12.8 - 0.01 * k, 0.012);
        }
        solver.solve();
        Network network = aircraft.network();
        int[] from = network.branches().stream().mapToInt(Branch::from).toArray();
        int[] to = network.branches().stream().mapToInt(Branch::to).toArray();
        Topology topology = Topology.of(nets, from, to);
        mesh = new StarMesh(topology);
        siemens = new double[topology.slots()];
        for (int b = 0; b < from.length; b++) {
            siemens[topology.slot(from[b], to[b])] += 1.0 + b;
        }
        amps = new double[nets];
        volts = new double[nets];
        amps[0] = 1.0;
    }

    /** From 0 V everywhere. */
    @Benchmark
    public double fromZeroVolts() throws NoOperatingPoint {
        solver.start(zero);
        solver.solve();
        return solver.volts(3);
    }

    /** A load changes its resistance. */
    @Benchmark
    public double warmAfterOneLoad() throws NoOperatingPoint {
        solver.law(load, loads[turn++ & 1]);
        solver.solve();
        return solver.volts(3);
    }

    /** A load is switched, so the islands are found anew. */
    @Benchmark
    public double warmAfterOneSwitch() throws NoOperatingPoint {
        solver.law(load, switches[turn++ & 1]);
        solver.solve();
        return solver.volts(3);
    }

    /** The battery's voltage has fallen a little, as between two events. */
    @Benchmark
    public double warmAfterNewBattery() throws NoOperatingPoint {
        solver.law(0, batteries[turn++ & 63]);
        solver.solve();
        return solver.volts(3);
    }

    /** The matrix work alone, once. */
    @Benchmark
    public double factorAndSolve() {
        mesh.reduce(siemens);
        mesh.solve(amps, volts);
        return volts[0];
    }
}

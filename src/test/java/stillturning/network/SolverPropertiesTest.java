package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static stillturning.network.Laws.assertLawsHold;
import static stillturning.network.Laws.solved;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** What holds for every network; each case is some hundred seeds from the one shown. */
class SolverPropertiesTest {
    private static final int SEEDS = 300;

    @ParameterizedTest
    @ValueSource(longs = {0, 100_000, 200_000})
    void everyMixedNetworkIsSolvedAndObeysItsLaws(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            solved(RandomNetworks.mixed(seed));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 100_000})
    void sparseEqualsDense(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            Network network = RandomNetworks.straight(seed);
            OperatingPoint point = solved(network);
            double[] dense = DenseReference.volts(network);
            for (int net = 0; net < dense.length; net++) {
                assertEquals(dense[net], point.volts(net), 1e-9, "seed " + seed + " net " + net);
            }
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 100_000})
    void namesOfNetsAndOrderOfBranchesDoNotMatter(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            Network network = RandomNetworks.mixed(seed);
            SplittableRandom random = new SplittableRandom(seed);
            int[] renamed = shuffled(1, network.nets(), random);
            int[] moved = shuffled(0, network.branches().size(), random);
            OperatingPoint one = OperatingPoints.of(network);
            OperatingPoint other = OperatingPoints.of(shuffled(network, renamed, moved));
            for (int net = 0; net < network.nets(); net++) {
                if (one.floating(net)) {
                    assertTrue(other.floating(renamed[net]), "seed " + seed + " net " + net);
                } else {
                    double volts = other.volts(renamed[net]);
                    assertEquals(one.volts(net), volts, 1e-9, "seed " + seed + " net " + net);
                }
            }
        }
    }

    private static int[] shuffled(int first, int count, SplittableRandom random) {
        int[] order = new int[count];
        for (int k = 0; k < count; k++) {
            order[k] = k;
        }
        for (int k = count - 1; k > first; k--) {
            int with = first + random.nextInt(k - first + 1);
            int held = order[k];
            order[k] = order[with];
            order[with] = held;
        }
        return order;
    }

    private static Network shuffled(Network network, int[] renamed, int[] moved) {
        Branch[] branches = new Branch[moved.length];
        for (int b = 0; b < moved.length; b++) {
            Branch old = network.branches().get(b);
            BranchLaw law = old.law();
            if (law instanceof ConverterInput c) {
                int out = moved[c.outputBranch()];
                law = new ConverterInput(out, c.efficiency(), c.idleWatts(), c.floorVolts());
            }
            branches[moved[b]] = new Branch(renamed[old.from()], renamed[old.to()], law);
        }
        return new Network(network.nets(), List.of(branches));
    }

    @ParameterizedTest
    @ValueSource(longs = {0, 100_000})
    void aWarmStartFromAnywhereReachesTheSamePoint(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            Network network = RandomNetworks.straight(seed);
            assertSameFromAnywhere(network, seed);
        }
    }

    /** Diodes, limits and charging batteries without a load of constant power: one point only. */
    @ParameterizedTest
    @ValueSource(longs = {0, 100_000})
    void rectifiersAndLimitsHaveOnePointFromAnyStart(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            Network mixed = RandomNetworks.mixed(seed);
            List<Branch> rising = new ArrayList<>();
            for (Branch branch : mixed.branches()) {
                BranchLaw law = branch.law();
                boolean may = law instanceof ConstantPower || law instanceof ConverterInput;
                BranchLaw instead = may ? new Resistive(9.0) : law;
                rising.add(new Branch(branch.from(), branch.to(), instead));
            }
            assertSameFromAnywhere(new Network(mixed.nets(), rising), seed);
        }
    }

    private static void assertSameFromAnywhere(Network network, long seed) throws NoOperatingPoint {
        OperatingPoint cold = solved(network);
        NodalSolver solver = solver(network);
        SplittableRandom random = new SplittableRandom(seed);
        double[] start = new double[network.nets()];
        for (int net = 1; net < start.length; net++) {
            start[net] = random.nextDouble(-5.0, 20.0);
        }
        solver.start(start);
        solver.solve();
        assertLawsHold(solver.point(), network);
        for (int net = 0; net < network.nets(); net++) {
            assertEquals(cold.volts(net), solver.volts(net), 1e-9, "seed " + seed + " net " + net);
        }
    }

    private static NodalSolver solver(Network network) {
        int[] from = network.branches().stream().mapToInt(Branch::from).toArray();
        int[] to = network.branches().stream().mapToInt(Branch::to).toArray();
        BranchLaw[] laws = network.branches().stream().map(Branch::law).toArray(BranchLaw[]::new);
        return new NodalSolver(Topology.of(network.nets(), from, to), from, to, laws);
    }

    /** Every passive net rises with every source (the inverse of such a matrix has no minus). */
    @ParameterizedTest
    @ValueSource(longs = {0, 100_000})
    void aStrongerSourceInParallelNeverLowersAResistiveLoad(long first) throws NoOperatingPoint {
        for (long seed = first; seed < first + SEEDS; seed++) {
            Network network = RandomNetworks.straight(seed);
            OperatingPoint before = solved(network);
            List<Branch> more = new ArrayList<>(network.branches());
            int at = 1 + (int) (seed % (network.nets() - 1));
            more.add(new Branch(at, 0, new SourceBehindOhms(14.0, 0.02)));
            OperatingPoint after = solved(new Network(network.nets(), more));
            for (int net = 0; net < network.nets(); net++) {
                double fall = before.volts(net) - after.volts(net);
                assertTrue(fall <= 1e-9, "seed " + seed + " net " + net + " fell by " + fall);
            }
        }
    }

    /** A story of changes on one solver ends where a fresh solver arrives. */
    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5})
    void aLongStoryOfChangesForgetsNothingAndKeepsNothing(long seed) throws NoOperatingPoint {
        AircraftNetwork aircraft = AircraftNetwork.of(60);
        List<Branch> branches = new ArrayList<>(aircraft.network().branches());
        NodalSolver solver = aircraft.solver();
        SplittableRandom random = new SplittableRandom(seed);
        for (int turn = 0; turn < 300; turn++) {
            int b = random.nextInt(branches.size());
            BranchLaw old = branches.get(b).law();
            BranchLaw law =
                    random.nextInt(3) == 0
                            ? aircraft.network().branches().get(b).law()
                            : random.nextInt(2) == 0 ? Open.CIRCUIT : changed(old);
            solver.law(b, law);
            branches.set(b, new Branch(branches.get(b).from(), branches.get(b).to(), law));
            solver.solve();
            Network now = new Network(60, branches);
            OperatingPoint fresh = OperatingPoints.of(now);
            assertLawsHold(solver.point(), now);
            for (int net = 0; net < 60; net++) {
                String where = "seed " + seed + " turn " + turn + " net " + net;
                assertEquals(fresh.floating(net), solver.floating(net), where);
                assertEquals(fresh.volts(net), solver.volts(net), 1e-8, where);
            }
        }
    }

    private static BranchLaw changed(BranchLaw law) {
        if (law instanceof Resistive resistive) {
            return new Resistive(resistive.ohms() * 1.3);
        }
        if (law instanceof ConstantPower power) {
            return new ConstantPower(power.watts() * 1.2, power.floorVolts());
        }
        return law;
    }

    @Test
    void sameNetworkSameBits() throws NoOperatingPoint {
        Network network = RandomNetworks.mixed(7);
        assertEquals(OperatingPoints.of(network), OperatingPoints.of(network));
    }
}

package stillturning.network;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static stillturning.network.Laws.assertCurrentsHold;
import static stillturning.network.Laws.solved;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import stillturning.bench.Effort;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.Open;

/** How rare it is that no operating point is found: of 10,000 states, none. */
class RefusalsTest {
    private static final int STATES = Effort.cases(500, 10_000);
    private static final int TORN_WARM = Effort.cases(100, 1_000);

    /** Every answer obeys Kirchhoff's law, each branch its own, and energy; 539 were refused. */
    @Test
    void noTornNetworkIsRefused() {
        List<String> refused = new ArrayList<>();
        for (long seed = 0; seed < STATES; seed++) {
            try {
                solved(TornNetworks.of(seed));
            } catch (NoOperatingPoint e) {
                refused.add(seed + ": " + e.getMessage());
            }
        }
        assertEquals(List.of(), refused);
    }

    /** The same from the voltages of before a branch gave way, as in a story. */
    @Test
    void noNetworkIsRefusedWhenABranchGivesWay() {
        List<String> refused = new ArrayList<>();
        for (long seed = 10_000; seed < 10_000 + TORN_WARM; seed++) {
            try {
                solvedAsItTears(TornNetworks.of(seed), new SplittableRandom(seed));
            } catch (NoOperatingPoint e) {
                refused.add(seed + ": " + e.getMessage());
            }
        }
        assertEquals(List.of(), refused);
    }

    private static void solvedAsItTears(Network network, SplittableRandom random)
            throws NoOperatingPoint {
        List<Branch> branches = new ArrayList<>(network.branches());
        int[] from = branches.stream().mapToInt(Branch::from).toArray();
        int[] to = branches.stream().mapToInt(Branch::to).toArray();
        BranchLaw[] laws = branches.stream().map(Branch::law).toArray(BranchLaw[]::new);
        NodalSolver solver = new NodalSolver(Topology.of(network.nets(), from, to), from, to, laws);
        solver.solve();
        int torn = random.nextInt(branches.size());
        branches.set(torn, new Branch(from[torn], to[torn], Open.CIRCUIT));
        solver.law(torn, Open.CIRCUIT);
        solver.solve();
        assertCurrentsHold(solver.point(), new Network(network.nets(), branches));
    }
}

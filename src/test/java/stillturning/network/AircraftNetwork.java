package stillturning.network;

import java.util.ArrayList;
import java.util.List;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/**
 * A network of a wanted size in the usual mix: battery, limited source, buses, two diodes, feeds to
 * loads (half of them constant power), returns to a common ground net. For benchmarks and tests.
 */
final class AircraftNetwork {
    private final List<Branch> branches = new ArrayList<>();
    private final int nets;
    private int firstLoad;

    private AircraftNetwork(int nets) {
        this.nets = nets;
        build();
    }

    static AircraftNetwork of(int nets) {
        return new AircraftNetwork(nets);
    }

    Network network() {
        return new Network(nets, branches);
    }

    /** Index of the first load branch, a resistive one. */
    int firstLoad() {
        return firstLoad;
    }

    NodalSolver solver() {
        int[] from = branches.stream().mapToInt(Branch::from).toArray();
        int[] to = branches.stream().mapToInt(Branch::to).toArray();
        BranchLaw[] laws = branches.stream().map(Branch::law).toArray(BranchLaw[]::new);
        return new NodalSolver(Topology.of(nets, from, to), from, to, laws);
    }

    private void build() {
        int battery = 1;
        int alternator = 2;
        int main = 3;
        int engine = 4;
        int essential = 5;
        int ground = 6;
        add(battery, 0, new SourceBehindOhms(12.8, 0.012));
        add(alternator, 0, new LimitedSource(14.2, 0.01, 45.0 + nets / 2.0));
        add(battery, main, new Resistive(0.004));
        add(alternator, main, new Resistive(0.006));
        add(main, engine, new DiodeDrop(1e-6, 0.0271, 0.006));
        add(battery, essential, new DiodeDrop(1e-6, 0.0271, 0.006));
        add(main, essential, new Resistive(0.02));
        add(battery, engine, Open.CIRCUIT);
        add(ground, 0, new Resistive(0.0015));
        int[] buses = {main, engine, essential};
        firstLoad = branches.size() + 1;
        for (int net = 7, load = 0; net + 1 < nets; net += 2, load++) {
            add(buses[load % 3], net, new Resistive(0.02 + 0.005 * (load % 7)));
            add(net, net + 1, load(load));
            add(net + 1, ground, new Resistive(0.01 + 0.002 * (load % 5)));
        }
        if (nets % 2 == 0) {
            add(main, nets - 1, new Resistive(0.03));
            add(nets - 1, 0, new Resistive(30.0));
        }
    }

    private static BranchLaw load(int load) {
        double watts = 4.0 + 3.0 * (load % 6);
        return load % 2 == 0 ? new Resistive(170.0 / watts) : new ConstantPower(watts, 9.0);
    }

    private void add(int from, int to, BranchLaw law) {
        branches.add(new Branch(from, to, law));
    }
}

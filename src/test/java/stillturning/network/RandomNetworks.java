package stillturning.network;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import stillturning.network.law.BranchLaw;
import stillturning.network.law.ChargeOnly;
import stillturning.network.law.ConstantCurrent;
import stillturning.network.law.ConstantPower;
import stillturning.network.law.ConverterInput;
import stillturning.network.law.DiodeDrop;
import stillturning.network.law.LimitedConductor;
import stillturning.network.law.LimitedSource;
import stillturning.network.law.Open;
import stillturning.network.law.Resistive;
import stillturning.network.law.SourceBehindOhms;

/** Seeded networks in the shape of a light aircraft's: buses, wires, returns, loads, diodes. */
final class RandomNetworks {
    private final SplittableRandom random;
    private final List<Branch> branches = new ArrayList<>();
    private final List<Integer> feeds = new ArrayList<>();
    private final List<Integer> returns = new ArrayList<>(List.of(0));
    private int nets = 1;

    private RandomNetworks(long seed) {
        random = new SplittableRandom(seed);
    }

    /** Battery, limited sources, wires, returns, every kind of law. */
    static Network mixed(long seed) {
        RandomNetworks draft = new RandomNetworks(seed);
        int size = 2 + draft.random.nextInt(40);
        draft.trunk();
        while (draft.nets < size) {
            draft.grow(true);
        }
        draft.mesh(size / 5);
        return draft.network();
    }

    /** The same shape out of sources and resistances alone. */
    static Network straight(long seed) {
        RandomNetworks draft = new RandomNetworks(seed);
        int size = 2 + draft.random.nextInt(40);
        draft.trunk();
        while (draft.nets < size) {
            draft.grow(false);
        }
        draft.mesh(0);
        return draft.network();
    }

    private Network network() {
        return new Network(nets, branches);
    }

    private void trunk() {
        feeds.add(nets++);
        add(feeds.get(0), 0, new SourceBehindOhms(between(12.0, 13.2), between(0.008, 0.04)));
    }

    private void grow(boolean everyLaw) {
        int net = nets++;
        if (random.nextInt(8) == 0) {
            add(net, one(returns), new Resistive(between(0.002, 0.05)));
            returns.add(net);
            return;
        }
        add(one(feeds), net, everyLaw ? path() : wire());
        feeds.add(net);
        load(net, everyLaw);
    }

    private BranchLaw path() {
        return switch (random.nextInt(12)) {
            case 0, 1 -> new DiodeDrop(1e-6, 0.0271, 0.008);
            case 2 -> new DiodeDrop(2e-9, 0.0401, 0.02);
            case 3 -> new LimitedConductor(between(0.005, 0.03), between(3.0, 25.0));
            case 4 -> Open.CIRCUIT;
            default -> wire();
        };
    }

    private Resistive wire() {
        return new Resistive(Math.pow(10.0, between(-3.0, -0.7)));
    }

    private void load(int net, boolean everyLaw) {
        int ret = one(returns);
        double watts = between(2.0, 45.0);
        if (!everyLaw) {
            add(net, ret, new Resistive(150.0 / watts));
            return;
        }
        switch (random.nextInt(20)) {
            case 0, 1, 2, 3, 4, 5, 6 -> add(net, ret, new ConstantPower(watts, 7.0));
            case 7, 8, 9, 10 -> add(net, ret, new Resistive(150.0 / watts));
            case 11, 12 -> add(net, ret, new ConstantCurrent(watts / 12.0, 7.0));
            case 13 -> add(net, 0, new SourceBehindOhms(between(11.0, 13.5), between(0.01, 0.1)));
            case 14 ->
                    add(net, 0, new LimitedSource(between(13.5, 14.5), 0.01, between(5.0, 45.0)));
            case 15 -> add(net, 0, new ChargeOnly(between(10.5, 13.0), 0.03));
            case 16 -> add(net, ret, new Resistive(between(0.005, 0.1)));
            case 17 -> converter(net, ret);
            default -> add(net, ret, Open.CIRCUIT);
        }
    }

    private void converter(int net, int ret) {
        int out = nets++;
        add(out, ret, new LimitedSource(5.0, 0.02, 6.0));
        add(net, ret, new ConverterInput(branches.size() - 1, 0.9, 1.0, 7.0));
        add(out, ret, new Resistive(between(0.5, 20.0)));
    }

    private void mesh(int ties) {
        for (int n = 0; n < ties; n++) {
            int from = one(feeds);
            int to = one(feeds);
            if (from != to) {
                add(from, to, path());
            }
        }
    }

    private void add(int from, int to, BranchLaw law) {
        branches.add(new Branch(from, to, law));
    }

    private int one(List<Integer> of) {
        return of.get(random.nextInt(of.size()));
    }

    private double between(double low, double high) {
        return random.nextDouble(low, high);
    }
}

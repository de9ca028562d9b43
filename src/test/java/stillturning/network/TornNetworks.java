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

/**
 * Seeded networks as failures leave them: returns and minus leads that are torn off, so that loads
 * and converters hang between two feeds; converters that feed what feeds them; loads with two
 * inputs behind diodes; flat batteries and sources at their limits.
 */
final class TornNetworks {
    private static final BranchLaw SCHOTTKY = new DiodeDrop(1e-6, 0.0271, 0.008);
    private static final BranchLaw SILICON = new DiodeDrop(2e-9, 0.0401, 0.02);

    private final SplittableRandom random;
    private final List<Branch> branches = new ArrayList<>();
    private final List<Integer> feeds = new ArrayList<>();
    private final List<Integer> returns = new ArrayList<>(List.of(0));
    private int nets = 1;

    private TornNetworks(long seed) {
        random = new SplittableRandom(seed);
    }

    static Network of(long seed) {
        TornNetworks draft = new TornNetworks(seed);
        draft.battery();
        int pieces = 2 + draft.random.nextInt(14);
        for (int n = 0; n < pieces; n++) {
            draft.grow();
        }
        return new Network(draft.nets, draft.branches);
    }

    private void grow() {
        switch (random.nextInt(12)) {
            case 0 -> battery();
            case 1 -> add(one(feeds), ground(), alternator());
            case 2 -> returns.add(behind(ground(), lead()));
            case 3, 4 -> feeds.add(behind(one(feeds), lead()));
            case 5, 6, 7 -> converter();
            case 8, 9 -> add(behind(one(feeds), lead()), ground(), load());
            case 10 -> fedTwice();
            default -> tie();
        }
    }

    /** A battery with its own minus lead. */
    private void battery() {
        int plus = nets++;
        BranchLaw law =
                random.nextInt(5) == 0
                        ? new ChargeOnly(between(10.5, 13.0), between(0.005, 0.1))
                        : new SourceBehindOhms(between(11.0, 13.4), between(0.005, 0.1));
        add(plus, ground(), law);
        feeds.add(plus);
    }

    private BranchLaw alternator() {
        return new LimitedSource(between(13.5, 15.0), between(0.004, 0.05), between(2.0, 60.0));
    }

    /** Its input, its minus lead, what it delivers to, and often a way back to its own input. */
    private void converter() {
        int in = behind(one(feeds), lead());
        int minus = behind(ground(), lead());
        int out = nets++;
        double volts = random.nextBoolean() ? between(11.0, 14.5) : between(4.0, 9.0);
        add(out, minus, new LimitedSource(volts, between(0.004, 0.05), between(1.0, 15.0)));
        double efficiency = random.nextInt(4) == 0 ? 1.0 : between(0.75, 0.97);
        add(
                in,
                minus,
                new ConverterInput(
                        branches.size() - 1, efficiency, between(0.0, 3.0), between(7.0, 9.5)));
        feeds.add(behind(out, lead()));
        if (random.nextInt(3) == 0) {
            add(out, one(feeds), lead());
        }
    }

    /** One load behind two diodes. */
    private void fedTwice() {
        int inside = nets++;
        add(behind(one(feeds), lead()), inside, SCHOTTKY);
        add(behind(one(feeds), lead()), inside, SCHOTTKY);
        add(inside, ground(), load());
    }

    private void tie() {
        int from = one(feeds);
        int to = one(feeds);
        if (from != to) {
            add(from, to, lead());
        }
    }

    private BranchLaw load() {
        double floor = between(5.0, 11.0);
        double amps = Math.pow(10.0, between(-1.0, 1.4));
        return switch (random.nextInt(5)) {
            case 0 -> new Resistive(12.0 / amps);
            case 1, 2 -> new ConstantCurrent(amps, floor);
            default -> new ConstantPower(12.0 * amps, floor);
        };
    }

    private BranchLaw lead() {
        return switch (random.nextInt(14)) {
            case 0 -> SCHOTTKY;
            case 1 -> SILICON;
            case 2 -> new LimitedConductor(between(0.005, 0.03), between(1.0, 25.0));
            case 3, 4 -> Open.CIRCUIT;
            default -> new Resistive(Math.pow(10.0, between(-3.5, -0.5)));
        };
    }

    /** A new net on the other side of a branch. */
    private int behind(int net, BranchLaw law) {
        add(net, nets, law);
        return nets++;
    }

    private int ground() {
        int net = one(returns);
        return random.nextInt(3) == 0 ? behind(net, lead()) : net;
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

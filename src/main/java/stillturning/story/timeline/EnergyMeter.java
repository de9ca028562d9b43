package stillturning.story.timeline;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import stillturning.parts.element.Conversion;
import stillturning.parts.element.Element;
import stillturning.parts.element.Element.Passage;
import stillturning.story.Balance;
import stillturning.story.Balance.Account;
import stillturning.story.UntoldStory;
import stillturning.story.device.BranchLayout;
import stillturning.story.device.BranchLayout.Seat;
import stillturning.story.device.Situation;
import stillturning.story.device.battery.Store;
import stillturning.story.device.plant.Plant;
import stillturning.story.timeline.stride.Integrator;
import stillturning.story.timeline.stride.RungeKuttaPair;

/**
 * Keeps account of energy and charge with the weights by which the charges themselves move on, and
 * holds the sum of what flowed against what batteries and capacitors hold less at the end.
 *
 * <p>Three things are held against each other that are computed apart: the powers of all branches,
 * which cancel if the currents do (B. D. H. Tellegen, Philips Res. Rep. 7 (1952) 259-269, from
 * memory); the energy under each store's open-circuit curve between its charges; and its charge
 * against the integral of what it used up.
 */
final class EnergyMeter implements Integrator.Follower {

    /** Energy below which nothing is held against anything (J). */
    private static final double NOTHING_JOULES = 1e-3;

    /** The same for each second (W): what is dead for hours only adds up rounding. */
    private static final double NOTHING_WATTS = 0.01;

    private static final List<Account> ORDER = List.of(Account.values());
    private static final int ACCOUNTS = ORDER.size();

    private final Situation now;
    private final int[] accountOf;
    private final double[] branchWatts;
    private final Store[] stores;
    private final double[][] watts = new double[RungeKuttaPair.MOST_STAGES][ACCOUNTS];
    private final double[][] storing;
    private final double[][] amps;
    private final double[][] using;
    private final double[] joules = new double[ACCOUNTS];
    private final double[] flowedJoules;
    private final double[] storedJoules;
    private final double[] coulombs;
    private final double[] used;
    private final double[] gone;
    private final double[] chargeBefore;
    private final boolean[] moves;
    private final double mayBeMissing;

    /**
     * @param mayBeMissing share of all energy, or of a store's full charge
     */
    EnergyMeter(Plant plant, BranchLayout layout, Situation now, double mayBeMissing) {
        this.mayBeMissing = mayBeMissing;
        this.now = now;
        this.accountOf = new int[layout.from.length];
        this.branchWatts = new double[layout.from.length];
        for (Seat seat : layout.seats) {
            Element element = seat.placed().element();
            accountOf[seat.branch()] = ORDER.indexOf(account(element));
            if (element instanceof Conversion) {
                accountOf[seat.branch() + 1] = ORDER.indexOf(Account.CONVERTERS);
            }
        }
        this.stores = plant.stores().toArray(Store[]::new);
        this.storing = new double[RungeKuttaPair.MOST_STAGES][stores.length];
        this.amps = new double[RungeKuttaPair.MOST_STAGES][stores.length];
        this.using = new double[RungeKuttaPair.MOST_STAGES][stores.length];
        this.flowedJoules = new double[stores.length];
        this.storedJoules = new double[stores.length];
        this.coulombs = new double[stores.length];
        this.used = new double[stores.length];
        this.gone = new double[stores.length];
        this.chargeBefore = new double[stores.length];
        this.moves = new boolean[stores.length];
    }

    private static Account account(Element element) {
        return switch (element.role()) {
            case BATTERY -> Account.BATTERIES;
            case GENERATOR -> Account.ALTERNATORS;
            case CAPACITOR -> Account.CAPACITORS;
            case LOAD -> Account.LOADS;
            case COIL -> Account.COILS;
            case CONVERTER -> Account.CONVERTERS;
            case PATH, ELECTRONICS -> wayAccount(element.passage());
        };
    }

    private static Account wayAccount(Passage passage) {
        return switch (passage) {
            case ONE_WAY -> Account.DIODES;
            case BOTH_WAYS, NONE -> Account.METAL;
        };
    }

    @Override
    public void read(int stage) {
        double[] here = watts[stage];
        Arrays.fill(here, 0);
        now.solver.watts(branchWatts);
        for (int branch = 0; branch < accountOf.length; branch++) {
            here[accountOf[branch]] += branchWatts[branch];
        }
        for (int i = 0; i < stores.length; i++) {
            double rate = stores[i].perSecond();
            boolean movesNow = Math.abs(rate) > Simulation.STANDSTILL;
            amps[stage][i] = stores[i].dischargeAmps();
            if (stage == 0) {
                chargeBefore[i] = stores[i].value();
                moves[i] = movesNow;
            }
            using[stage][i] = moves[i] || movesNow ? -rate : 0;
            storing[stage][i] = moves[i] || movesNow ? stores[i].storingWatts() : 0;
        }
    }

    @Override
    public void taken(double seconds, double[] weights) {
        for (int stage = 0; stage < weights.length; stage++) {
            double weight = seconds * weights[stage];
            for (int account = 0; account < ACCOUNTS; account++) {
                joules[account] += weight * watts[stage][account];
            }
            for (int i = 0; i < stores.length; i++) {
                coulombs[i] += weight * amps[stage][i];
                used[i] += weight * using[stage][i];
                flowedJoules[i] -= weight * storing[stage][i];
            }
        }
        for (int i = 0; i < stores.length; i++) {
            gone[i] += chargeBefore[i] - stores[i].value();
            storedJoules[i] += stores[i].joulesDownFrom(chargeBefore[i]);
        }
    }

    /** A balance, with the energy that its residual is a part of (J). */
    private record Drawn(Balance balance, double turnover) {}

    /**
     * The balance so far.
     *
     * @throws UntoldStory naming the worst part, if more is missing than rounding explains
     */
    Balance balance() throws UntoldStory {
        Drawn drawn = draw();
        hold(drawn.balance.residual(), drawn.turnover);
        return drawn.balance;
    }

    /** The balance of a story that breaks off, whether it balances or not. */
    Balance asFarAsTold() {
        return draw().balance;
    }

    private Drawn draw() {
        Map<Account, Double> accounts = new EnumMap<>(Account.class);
        for (Account account : ORDER) {
            accounts.put(account, (account.gives() ? -1 : 1) * joules[ORDER.indexOf(account)]);
        }
        double stored =
                split(Account.BATTERIES, Account.LOST_IN_BATTERIES, accounts)
                        + split(Account.CAPACITORS, Account.LOST_IN_CAPACITORS, accounts);
        double turnover = Math.max(NOTHING_JOULES + NOTHING_WATTS * now.seconds, Math.abs(stored));
        double missing = 0;
        for (Map.Entry<Account, Double> entry : accounts.entrySet()) {
            missing += (entry.getKey().gives() ? 1 : -1) * entry.getValue();
            turnover = Math.max(turnover, Math.abs(entry.getValue()));
        }
        double residual = Math.abs(missing) / turnover;
        Balance balance =
                new Balance(
                        accounts,
                        IntStream.range(0, stores.length)
                                .mapToObj(i -> new Balance.Charge(part(i), coulombs[i], gone[i]))
                                .toList(),
                        residual);
        return new Drawn(balance, turnover);
    }

    /**
     * Divides what flowed at the terminals of stores into what they store less and what they lost.
     *
     * @return what they store less (J)
     */
    private double split(Account account, Account losses, Map<Account, Double> accounts) {
        double stored = 0;
        double lost = joules[ORDER.indexOf(account)];
        boolean any = account == Account.BATTERIES;
        for (int i = 0; i < stores.length; i++) {
            if (stores[i].account() == account) {
                stored += storedJoules[i];
                lost += flowedJoules[i];
                any = true;
            }
        }
        if (any) {
            accounts.put(account, stored);
            accounts.put(losses, lost);
        } else {
            accounts.remove(account);
            accounts.remove(losses);
        }
        return stored;
    }

    private void hold(double residual, double turnover) throws UntoldStory {
        int worst = -1;
        double most = Math.max(mayBeMissing, residual / 2);
        for (int i = 0; i < stores.length; i++) {
            double energy = Math.abs(storedJoules[i] - flowedJoules[i]) / turnover;
            double off = Math.max(energy, Math.abs(used[i] - gone[i]));
            if (off > most) {
                most = off;
                worst = i;
            }
        }
        if (worst >= 0 || residual > mayBeMissing) {
            throw new UntoldStory(
                    "the account of energy and charge does not balance up to "
                            + now.seconds
                            + " s: "
                            + Math.max(residual, most)
                            + " is missing"
                            + (worst >= 0
                                    ? ", most of it at " + part(worst)
                                    : " from the currents of the network"));
        }
    }

    private String part(int store) {
        return stores[store].placed().part();
    }
}

package stillturning.reliability.cover;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Comparator;
import java.util.List;
import stillturning.reliability.cover.CoverChoice.Proof;
import stillturning.reliability.cover.Solver.Budget;
import stillturning.reliability.cover.Solver.Satisfiable;

/**
 * The cheapest choice for some needs: a greedy one, then ever cheaper ones until none is left, then
 * the first among equals, settling set after set.
 */
final class CoverSearch {
    private final List<Integer> costs;
    private final List<List<Integer>> needs;
    private final Budget budget;
    private List<Integer> chosen;
    private long lowerBound;
    private Proof proof = Proof.NONE;

    /**
     * @param costs by set
     * @param needs for each item the sets that cover it, at least one
     */
    CoverSearch(List<Integer> costs, List<List<Integer>> needs, Budget budget) {
        this.costs = costs;
        this.needs = needs;
        this.budget = budget;
        chosen = greedy();
        lowerBound = prices();
        cheapen();
        if (proof == Proof.CHEAPEST) {
            settle();
        }
    }

    List<Integer> chosen() {
        return chosen;
    }

    long cost() {
        return cost(chosen);
    }

    long lowerBound() {
        return lowerBound;
    }

    Proof proof() {
        return proof;
    }

    private long cost(List<Integer> sets) {
        return sets.stream().mapToLong(costs::get).sum();
    }

    /** Whatever meets most needs for its cost, again and again. */
    private List<Integer> greedy() {
        BitSet taken = new BitSet();
        List<List<Integer>> unmet = new ArrayList<>(needs);
        while (!unmet.isEmpty()) {
            int[] meets = new int[costs.size()];
            unmet.forEach(need -> need.forEach(set -> meets[set]++));
            int best = 0;
            for (int set = 1; set < meets.length; set++) {
                if ((long) meets[set] * costs.get(best) > (long) meets[best] * costs.get(set)) {
                    best = set;
                }
            }
            taken.set(best);
            unmet.removeIf(need -> need.stream().anyMatch(taken::get));
        }
        return taken.stream().boxed().toList();
    }

    /**
     * Every need pays what its sets still leave open, and no set is paid more than it costs: so no
     * choice costs less than all pay together.
     */
    private long prices() {
        long[] open = costs.stream().mapToLong(cost -> cost).toArray();
        List<List<Integer>> fewestFirst = new ArrayList<>(needs);
        fewestFirst.sort(Comparator.comparingInt(List::size));
        long paid = 0;
        for (List<Integer> need : fewestFirst) {
            long price = need.stream().mapToLong(set -> open[set]).min().orElse(0);
            need.forEach(set -> open[set] -= price);
            paid += price;
        }
        return paid;
    }

    private void cheapen() {
        Solver solver = new Solver(costs.size(), needs, budget);
        while (cost() > lowerBound) {
            solver.atMost(cost() - 1, costs);
            Satisfiable answer = solver.ask(List.of());
            if (answer == Satisfiable.UNKNOWN) {
                return;
            }
            if (answer == Satisfiable.NO) {
                lowerBound = cost();
            } else {
                chosen = solver.found();
            }
        }
        proof = Proof.CHEAPEST;
    }

    private void settle() {
        Solver solver = new Solver(costs.size(), needs, budget);
        solver.atMost(lowerBound, costs);
        List<Integer> settled = new ArrayList<>();
        for (int set = 0; set < costs.size(); set++) {
            int wanted = set + 1;
            if (!chosen.contains(set)) {
                settled.add(wanted);
                Satisfiable answer = solver.ask(settled);
                settled.remove(settled.size() - 1);
                if (answer == Satisfiable.UNKNOWN) {
                    return;
                }
                if (answer == Satisfiable.YES) {
                    chosen = solver.found();
                }
            }
            settled.add(chosen.contains(set) ? wanted : -wanted);
        }
        proof = Proof.CHEAPEST_AND_FIRST;
    }
}

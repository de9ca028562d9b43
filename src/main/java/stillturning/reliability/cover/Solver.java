package stillturning.reliability.cover;

import java.math.BigInteger;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;
import org.sat4j.core.Vec;
import org.sat4j.core.VecInt;
import org.sat4j.pb.IPBSolver;
import org.sat4j.pb.SolverFactory;
import org.sat4j.specs.ContradictionException;
import org.sat4j.specs.IVec;
import org.sat4j.specs.TimeoutException;

/** Asks Sat4j for choices of sets that meet every need and stay within a cost. */
final class Solver {
    private final IPBSolver solver = SolverFactory.newDefault();
    private final Budget budget;
    private final int sets;
    private boolean contradiction;
    private BitSet found = new BitSet();

    enum Satisfiable {
        YES,
        NO,
        UNKNOWN
    }

    /**
     * Conflicts that may still be spent: counted, not timed, so that every machine gives up alike.
     */
    static final class Budget {
        private long left;

        Budget(long conflicts) {
            left = conflicts;
        }
    }

    /**
     * @param needs for each item the sets that cover it
     */
    Solver(int sets, List<List<Integer>> needs, Budget budget) {
        this.sets = sets;
        this.budget = budget;
        solver.newVar(sets);
        for (List<Integer> need : needs) {
            clause(need.stream().mapToInt(set -> set + 1).toArray());
        }
    }

    private void clause(int... literals) {
        try {
            solver.addClause(new VecInt(literals));
        } catch (ContradictionException e) {
            contradiction = true;
        }
    }

    /** From now on no choice may cost more. */
    void atMost(long cost, List<Integer> costs) {
        List<BigInteger> each = new ArrayList<>();
        costs.forEach(one -> each.add(BigInteger.valueOf(one)));
        IVec<BigInteger> weights = new Vec<>(each.toArray(BigInteger[]::new));
        try {
            solver.addAtMost(
                    new VecInt(IntStream.rangeClosed(1, sets).toArray()),
                    weights,
                    BigInteger.valueOf(cost));
        } catch (ContradictionException e) {
            contradiction = true;
        }
    }

    /** From now on no choice may have all of these sets. */
    void block(List<Integer> chosen) {
        clause(chosen.stream().mapToInt(set -> -(set + 1)).toArray());
    }

    /**
     * Whether there is a choice.
     *
     * @param settled literals, set + 1 for one that must be chosen and its negative for one that
     *     must not
     */
    Satisfiable ask(List<Integer> settled) {
        if (contradiction) {
            return Satisfiable.NO;
        }
        if (budget.left <= 0) {
            return Satisfiable.UNKNOWN;
        }
        long before = conflicts();
        solver.setTimeoutOnConflicts((int) Math.min(budget.left, Integer.MAX_VALUE));
        try {
            int[] literals = settled.stream().mapToInt(literal -> literal).toArray();
            if (!solver.isSatisfiable(new VecInt(literals))) {
                return Satisfiable.NO;
            }
            found = new BitSet();
            IntStream.range(0, sets).filter(set -> solver.model(set + 1)).forEach(found::set);
            return Satisfiable.YES;
        } catch (TimeoutException e) {
            budget.left = 0;
            return Satisfiable.UNKNOWN;
        } finally {
            budget.left -= conflicts() - before;
        }
    }

    /** The choice behind the last yes. */
    List<Integer> found() {
        return found.stream().boxed().toList();
    }

    private long conflicts() {
        Number conflicts = solver.getStat().get("conflicts");
        return conflicts == null ? 0 : conflicts.longValue();
    }
}

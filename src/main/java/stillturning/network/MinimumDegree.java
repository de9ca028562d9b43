package stillturning.network;

import java.util.ArrayList;
import java.util.List;
import java.util.PriorityQueue;
import java.util.TreeSet;

/**
 * Order of elimination: always the net with the fewest neighbours left, the lowest number on a tie.
 * Near linear on chains and trees. Used once.
 */
final class MinimumDegree {
    private final List<TreeSet<Integer>> neighbours = new ArrayList<>();
    private final int nets;
    private final boolean[] deferred;

    /** More neighbours than this are joined by more ways than the net had. */
    private static final int NO_FILL = 2;

    MinimumDegree(int nets) {
        this.nets = nets;
        deferred = new boolean[nets];
        for (int net = 0; net < nets; net++) {
            neighbours.add(new TreeSet<>());
        }
    }

    void join(int one, int other) {
        if (one != 0 && other != 0 && one != other) {
            neighbours.get(one).add(other);
            neighbours.get(other).add(one);
        }
    }

    /** Has a net wait for all that are not deferred and have no more than two neighbours left. */
    void defer(int net) {
        deferred[net] = true;
    }

    /** All nets but the reference in order; afterwards {@link #aheadOf} has the fill as well. */
    int[] sequence() {
        int[] order = new int[nets - 1];
        boolean[] gone = new boolean[nets];
        PriorityQueue<Long> waiting = new PriorityQueue<>();
        for (int net = 1; net < nets; net++) {
            waiting.add(ticket(net));
        }
        for (int k = 0; k < order.length; ) {
            long ticket = waiting.remove();
            int net = (int) ticket;
            if (!gone[net] && ticket == ticket(net)) {
                gone[net] = true;
                order[k++] = net;
                eliminate(net, waiting);
            }
        }
        return order;
    }

    /** Neighbours that a net had when its turn came. */
    int[] aheadOf(int net) {
        return neighbours.get(net).stream().mapToInt(Integer::intValue).toArray();
    }

    private void eliminate(int net, PriorityQueue<Long> waiting) {
        TreeSet<Integer> around = neighbours.get(net);
        for (int one : around) {
            TreeSet<Integer> its = neighbours.get(one);
            its.remove(net);
            if (around.size() > 1) {
                its.addAll(around);
                its.remove(one);
            }
            waiting.add(ticket(one));
        }
    }

    private long ticket(int net) {
        int size = neighbours.get(net).size();
        long late = deferred[net] || size > NO_FILL ? nets : 0;
        return (late + size) << 32 | net;
    }
}

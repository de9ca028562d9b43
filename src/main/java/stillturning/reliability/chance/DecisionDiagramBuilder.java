package stillturning.reliability.chance;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Grows the diagram of a union of cut sets: one chain for each, joined in pairs of neighbours until
 * one is left.
 *
 * @see "R. E. Bryant, IEEE Trans. Comput. C-35 (1986) 677-691; A. Rauzy, Reliab. Eng. Syst. Saf. 40
 *     (1993) 203-211; both from memory, unverified"
 */
final class DecisionDiagramBuilder {
    /** A node's key has 22 bits for each of its ends and 20 for its level. */
    static final int MOST_NODES = 1 << 22;

    static final int MOST_EVENTS = 1 << 20;

    private static final int NO = 0;
    private static final int YES = 1;

    /** Pairs remembered for each node allowed. */
    private static final int PAIRS = 4;

    private final int limit;
    private final LongMap nodes = new LongMap();
    private final LongMap joined = new LongMap();
    private int[] levels = new int[1 << 10];
    private int[] highs = new int[1 << 10];
    private int[] lows = new int[1 << 10];
    private int size = 2;
    private int[] stack = new int[1 << 8];

    /** More nodes than allowed. */
    private static final class TooLarge extends Exception {
        private static final long serialVersionUID = 1;
    }

    private DecisionDiagramBuilder(int limit) {
        this.limit = limit;
        levels[NO] = Integer.MAX_VALUE;
        levels[YES] = Integer.MAX_VALUE;
    }

    /**
     * The diagram; empty if growing it takes more nodes than the limit.
     *
     * @param sets at least one
     */
    static Optional<DecisionDiagram> of(List<int[]> sets, int limit) {
        InterchangeableEvents twins = InterchangeableEvents.of(sets);
        VariableOrder asking = new VariableOrder(twins.sets(), twins.members().length);
        int[] order = asking.together();
        int[] levelOf = VariableOrder.placesOf(order);
        List<int[]> levels =
                twins.sets().stream()
                        .map(set -> IntStream.of(set).map(e -> levelOf[e]).sorted().toArray())
                        .sorted(Arrays::compare)
                        .toList();
        DecisionDiagramBuilder growth = new DecisionDiagramBuilder(limit);
        try {
            return Optional.of(growth.reachable(growth.union(levels), order, twins.members()));
        } catch (TooLarge e) {
            return Optional.empty();
        }
    }

    private int union(List<int[]> sets) throws TooLarge {
        List<Integer> roots = new ArrayList<>();
        for (int[] set : sets) {
            roots.add(chain(set));
        }
        while (roots.size() > 1) {
            List<Integer> halved = new ArrayList<>();
            for (int i = 0; i + 1 < roots.size(); i += 2) {
                halved.add(join(roots.get(i), roots.get(i + 1)));
            }
            if (roots.size() % 2 == 1) {
                halved.add(roots.get(roots.size() - 1));
            }
            roots = halved;
        }
        return roots.get(0);
    }

    private int chain(int[] set) throws TooLarge {
        int node = YES;
        for (int i = set.length - 1; i >= 0; i--) {
            node = node(set[i], node, NO);
        }
        return node;
    }

    /**
     * The diagram that says yes where either does; with a stack of its own, since chains are long.
     */
    private int join(int one, int other) throws TooLarge {
        int depth = push(0, one, other);
        while (depth > 0) {
            int f = stack[depth - 2];
            int g = stack[depth - 1];
            if (known(f, g) >= 0) {
                depth -= 2;
                continue;
            }
            int level = Math.min(levels[f], levels[g]);
            int fHigh = levels[f] == level ? highs[f] : f;
            int gHigh = levels[g] == level ? highs[g] : g;
            int high = known(fHigh, gHigh);
            if (high < 0) {
                depth = push(depth, fHigh, gHigh);
                continue;
            }
            int fLow = levels[f] == level ? lows[f] : f;
            int gLow = levels[g] == level ? lows[g] : g;
            int low = known(fLow, gLow);
            if (low < 0) {
                depth = push(depth, fLow, gLow);
                continue;
            }
            remember(f, g, node(level, high, low));
            depth -= 2;
        }
        return known(one, other);
    }

    private int push(int depth, int f, int g) {
        if (depth + 2 > stack.length) {
            stack = Arrays.copyOf(stack, 2 * stack.length);
        }
        stack[depth] = f;
        stack[depth + 1] = g;
        return depth + 2;
    }

    /** What the join of two is, if that is plain or remembered; -1 if not. */
    private int known(int f, int g) {
        if (f == YES || g == YES) {
            return YES;
        }
        if (f == NO || f == g) {
            return g;
        }
        if (g == NO) {
            return f;
        }
        return joined.get(pair(f, g));
    }

    private void remember(int f, int g, int node) throws TooLarge {
        if (joined.size() >= (long) PAIRS * limit) {
            throw new TooLarge();
        }
        joined.put(pair(f, g), node);
    }

    private static long pair(int f, int g) {
        return (long) Math.min(f, g) << 32 | Math.max(f, g);
    }

    private int node(int level, int high, int low) throws TooLarge {
        if (high == low) {
            return low;
        }
        long key = (long) level << 44 | (long) high << 22 | low;
        int known = nodes.get(key);
        if (known >= 0) {
            return known;
        }
        if (size >= limit) {
            throw new TooLarge();
        }
        if (size == levels.length) {
            levels = Arrays.copyOf(levels, 2 * size);
            highs = Arrays.copyOf(highs, 2 * size);
            lows = Arrays.copyOf(lows, 2 * size);
        }
        levels[size] = level;
        highs[size] = high;
        lows[size] = low;
        nodes.put(key, size);
        return size++;
    }

    /** What the root asks, without the nodes that only served on the way. */
    private DecisionDiagram reachable(int root, int[] order, int[][] twins) {
        boolean[] reached = new boolean[root + 1];
        reached[root] = true;
        int count = 2;
        // a node is always older than those that lead to it
        for (int node = root; node > YES; node--) {
            if (reached[node]) {
                reached[highs[node]] = true;
                reached[lows[node]] = true;
                count++;
            }
        }
        int[] place = new int[root + 1];
        place[YES] = YES;
        int[] asked = new int[count];
        int[] high = new int[count];
        int[] low = new int[count];
        int next = 2;
        for (int node = 2; node <= root; node++) {
            if (reached[node]) {
                place[node] = next;
                asked[next] = order[levels[node]];
                high[next] = place[highs[node]];
                low[next++] = place[lows[node]];
            }
        }
        return new DecisionDiagram(twins, asked, high, low);
    }

    /** From keys other than 0 to numbers of at least 0, without objects. */
    private static final class LongMap {
        private static final double FULL = .6;

        private long[] keys = new long[1 << 10];
        private int[] values = new int[1 << 10];
        private int size;

        /** The number kept under a key; -1 for none. */
        int get(long key) {
            int slot = slot(key);
            return keys[slot] == 0 ? -1 : values[slot];
        }

        void put(long key, int value) {
            if (size >= FULL * keys.length) {
                grow();
            }
            int slot = slot(key);
            if (keys[slot] == 0) {
                size++;
            }
            keys[slot] = key;
            values[slot] = value;
        }

        int size() {
            return size;
        }

        private int slot(long key) {
            int mask = keys.length - 1;
            int slot = (int) ((key * 0x9E3779B97F4A7C15L) >>> 32) & mask;
            while (keys[slot] != 0 && keys[slot] != key) {
                slot = (slot + 1) & mask;
            }
            return slot;
        }

        private void grow() {
            long[] oldKeys = keys;
            int[] oldValues = values;
            keys = new long[2 * oldKeys.length];
            values = new int[2 * oldKeys.length];
            for (int i = 0; i < oldKeys.length; i++) {
                if (oldKeys[i] != 0) {
                    int slot = slot(oldKeys[i]);
                    keys[slot] = oldKeys[i];
                    values[slot] = oldValues[i];
                }
            }
        }
    }
}

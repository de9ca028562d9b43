package stillturning.network;

import java.util.Arrays;

/** Which nets conduct to each other, and which islands have no way to the reference. */
final class Islands {
    private final int reference;
    private final int[] root;
    private final int[] lowestNet;
    private final int[] pinned;
    private int pins;

    /**
     * @param steps number of nets besides the reference, which comes after them
     */
    Islands(int steps) {
        reference = steps;
        root = new int[steps + 1];
        lowestNet = new int[steps + 1];
        pinned = new int[steps];
    }

    /**
     * Finds the islands.
     *
     * @param netAt the net of each step, to choose the pinned one independently of the order
     */
    void find(int[] from, int[] to, boolean[] conducts, int[] netAt) {
        for (int k = 0; k <= reference; k++) {
            root[k] = k;
        }
        for (int b = 0; b < from.length; b++) {
            if (conducts[b]) {
                int one = rootOf(from[b]);
                int other = rootOf(to[b]);
                root[Math.min(one, other)] = Math.max(one, other);
            }
        }
        pin(netAt);
    }

    private void pin(int[] netAt) {
        Arrays.fill(lowestNet, -1);
        for (int k = reference; k >= 0; k--) {
            int top = root[k] == k ? k : root[root[k]];
            root[k] = top;
            if (lowestNet[top] < 0 || netAt[k] < netAt[lowestNet[top]]) {
                lowestNet[top] = k;
            }
        }
        pins = 0;
        for (int k = 0; k < reference; k++) {
            if (root[k] == k) {
                pinned[pins++] = lowestNet[k];
            }
        }
    }

    private int rootOf(int step) {
        int at = step;
        while (root[at] != at) {
            root[at] = root[root[at]];
            at = root[at];
        }
        return at;
    }

    /** A number that the nets of one island share. */
    int islandOf(int step) {
        return root[step];
    }

    boolean floating(int step) {
        return root[step] != reference;
    }

    int pins() {
        return pins;
    }

    int pinned(int pin) {
        return pinned[pin];
    }
}

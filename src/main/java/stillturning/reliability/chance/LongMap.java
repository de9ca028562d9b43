package stillturning.reliability.chance;

/** From keys other than 0 to numbers of at least 0, without objects. */
final class LongMap {
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

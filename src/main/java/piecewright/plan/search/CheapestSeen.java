package piecewright.plan.search;

import java.util.Arrays;

/** The cheapest cost seen per bucket: an open hash of long keys. Scratch space of one search, used by one thread. */
final class CheapestSeen {
    private static final long EMPTY = -1;

    private long[] keys = new long[1 << 12];
    private double[] costs = new double[1 << 12];
    private int size;

    CheapestSeen() {
        Arrays.fill(keys, EMPTY);
    }

    /** The cheapest cost of a bucket; infinite when none was seen. */
    double costOf(long key) {
        int at = find(key);
        return keys[at] == key ? costs[at] : Double.POSITIVE_INFINITY;
    }

    /** Notes a cost for a bucket, 0 or more; true if it is cheaper than all before. */
    boolean improves(long key, double costMinutes) {
        int at = find(key);
        if (keys[at] == key && costs[at] <= costMinutes) return false;
        if (keys[at] != key) size++;
        keys[at] = key;
        costs[at] = costMinutes;
        if (size * 2 > keys.length) grow();
        return true;
    }

    private int find(long key) {
        int mask = keys.length - 1;
        long mixed = key * 0x9E3779B97F4A7C15L;
        int at = (int) (mixed >>> 32) & mask;
        while (keys[at] != EMPTY && keys[at] != key) at = (at + 1) & mask;
        return at;
    }

    private void grow() {
        long[] oldKeys = keys;
        double[] oldCosts = costs;
        keys = new long[oldKeys.length * 2];
        costs = new double[oldKeys.length * 2];
        Arrays.fill(keys, EMPTY);
        for (int i = 0; i < oldKeys.length; i++) {
            if (oldKeys[i] == EMPTY) continue;
            int at = find(oldKeys[i]);
            keys[at] = oldKeys[i];
            costs[at] = oldCosts[i];
        }
    }
}

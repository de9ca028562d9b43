package stillturning.reliability.cover;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What is left of a problem once the plain part is decided. A set that alone covers an item is
 * forced. A set is out of the question if another covers all that it does for less, or for as much
 * and with a lower number: so the first of the cheapest choices is never lost. An item needs no
 * thought if whatever covers some other item covers it too.
 */
final class Reduced {
    private final List<CoverSet> offers;
    private final BitSet items;
    private final BitSet open = new BitSet();
    private final BitSet forced = new BitSet();

    /** Items still to cover, by set. */
    private final List<BitSet> covers = new ArrayList<>();

    /**
     * @param items that some set covers
     */
    Reduced(BitSet items, List<CoverSet> offers) {
        this.offers = offers;
        this.items = (BitSet) items.clone();
        for (CoverSet offer : offers) {
            BitSet covered = new BitSet();
            offer.items().forEach(covered::set);
            covers.add(covered);
        }
        open.set(0, offers.size());
        boolean smaller = true;
        while (smaller) {
            int before = this.items.cardinality() + open.cardinality();
            force();
            dropSets();
            dropItems();
            smaller = this.items.cardinality() + open.cardinality() < before;
        }
    }

    /** Sets that every cheapest choice has. */
    BitSet forced() {
        return forced;
    }

    /** Sets to choose from, ascending. */
    List<Integer> open() {
        return open.stream().boxed().toList();
    }

    /** For each item to cover, the sets that do, ascending. */
    List<List<Integer>> needs() {
        return items.stream().mapToObj(item -> covering(item).stream().boxed().toList()).toList();
    }

    private BitSet covering(int item) {
        BitSet covering = new BitSet();
        open.stream().filter(set -> covers.get(set).get(item)).forEach(covering::set);
        return covering;
    }

    private void force() {
        for (int item : items.stream().toArray()) {
            BitSet covering = covering(item);
            if (items.get(item) && covering.cardinality() == 1) {
                int only = covering.nextSetBit(0);
                forced.set(only);
                open.clear(only);
                items.andNot(covers.get(only));
            }
        }
    }

    private void dropSets() {
        covers.forEach(covered -> covered.and(items));
        for (int set : open.stream().toArray()) {
            boolean useless = covers.get(set).isEmpty();
            if (useless || open.stream().anyMatch(other -> other != set && replaces(other, set))) {
                open.clear(set);
            }
        }
    }

    private boolean replaces(int other, int set) {
        long saved = (long) offers.get(set).cost() - offers.get(other).cost();
        return (saved > 0 || (saved == 0 && other < set))
                && within(covers.get(set), covers.get(other));
    }

    private void dropItems() {
        int[] left = items.stream().toArray();
        List<BitSet> covering = IntStream.of(left).mapToObj(this::covering).toList();
        for (int i = 0; i < left.length; i++) {
            for (int j = 0; j < left.length && items.get(left[i]); j++) {
                if (j != i && items.get(left[j]) && within(covering.get(j), covering.get(i))) {
                    items.clear(left[i]);
                }
            }
        }
        covers.forEach(covered -> covered.and(items));
    }

    private static boolean within(BitSet small, BitSet large) {
        BitSet outside = (BitSet) small.clone();
        outside.andNot(large);
        return outside.isEmpty();
    }
}

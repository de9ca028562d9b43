package stillturning.reliability.cutset;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Asks about every set of events, smallest first.
 *
 * <p>Left out is a set of which a part already brings the thing about: it is not minimal, whatever
 * it comes to itself. That is all that is left out, so nothing is supposed about more events being
 * worse. Where they are not (an opening that clears a short), a minimal set with one event more
 * comes to nothing; those are asked about as well, and listed.
 */
public final class CutSearch {

    /** Room for an event's number in the key of a set of four. */
    private static final int EVENT_BITS = 15;

    private final int events;
    private final SetOracle trial;
    private final SetSearchWatch watch;
    private final Set<Long> cuts = new HashSet<>();

    private CutSearch(int events, SetOracle trial, SetSearchWatch watch) {
        this.events = events;
        this.trial = trial;
        this.watch = watch;
    }

    /**
     * All minimal sets of up to so many events. The result does not depend on the number of
     * threads, nor on what the watch already knew.
     *
     * @param events how many there are, numbered from 0
     * @param order largest sets asked about, 1 to 4
     */
    public static CutSets of(int events, int order, SetOracle trial, SetSearchWatch watch) {
        if (events < 0 || events + 1 >= 1 << EVENT_BITS || order < 1 || order > 4) {
            throw new IllegalArgumentException(
                    "sets of up to " + order + " among " + events + " events");
        }
        return new CutSearch(events, trial, watch).upTo(order);
    }

    private CutSets upTo(int order) {
        List<Searched> done = new ArrayList<>();
        boolean complete = true;
        for (int size = 1; size <= order && complete; size++) {
            int now = size;
            List<Searched> level =
                    IntStream.range(0, events)
                            .parallel()
                            .mapToObj(n -> searched(new SearchBlock(now, alternating(n))))
                            .flatMap(Optional::stream)
                            .toList();
            complete = level.size() == events;
            done.addAll(level);
            level.stream()
                    .flatMap(searched -> searched.cuts().stream())
                    .forEach(cut -> cuts.add(key(cut)));
        }
        return new CutSets(
                order,
                done.stream()
                        .flatMap(s -> s.cuts().stream())
                        .sorted(CutSets.BY_SIZE_THEN_NUMBER)
                        .toList(),
                done.stream()
                        .flatMap(s -> s.healings().stream())
                        .sorted(
                                Comparator.comparing(Healing::set, CutSets.BY_SIZE_THEN_NUMBER)
                                        .thenComparingInt(Healing::by))
                        .toList(),
                done.stream()
                        .flatMap(s -> s.untold().stream())
                        .sorted(CutSets.BY_SIZE_THEN_NUMBER)
                        .toList(),
                done.stream().mapToLong(Searched::asked).sum(),
                complete);
    }

    /** First and last in turn, since a late first event has few that follow it. */
    private int alternating(int n) {
        return n % 2 == 0 ? n / 2 : events - 1 - n / 2;
    }

    private Optional<Searched> searched(SearchBlock block) {
        Optional<Searched> known = watch.known(block);
        if (known.isPresent()) {
            return known;
        }
        Asking asking = new Asking(block);
        if (!asking.all()) {
            return Optional.empty();
        }
        Searched searched = asking.searched();
        watch.done(searched);
        return Optional.of(searched);
    }

    private static long key(List<Integer> set) {
        long key = 0;
        for (int event : set) {
            key = key << EVENT_BITS | event + 1;
        }
        return key;
    }

    /** Goes through the sets of one block. */
    private final class Asking {

        private final SearchBlock block;
        private final int[] set;
        private final List<List<Integer>> found = new ArrayList<>();
        private final List<Healing> healings = new ArrayList<>();
        private final List<List<Integer>> untold = new ArrayList<>();
        private long asked;

        Asking(SearchBlock block) {
            this.block = block;
            this.set = new int[block.order()];
            set[0] = block.first();
        }

        /** Whether it got to the end. */
        boolean all() {
            return grow(1);
        }

        Searched searched() {
            return new Searched(block, found, healings, untold, asked);
        }

        private boolean grow(int size) {
            if (size == set.length) {
                ask();
                return !watch.cancelled();
            }
            for (set[size] = set[size - 1] + 1; set[size] < events; set[size]++) {
                if (!grow(size + 1)) {
                    return false;
                }
            }
            return true;
        }

        private void ask() {
            int whole = (1 << set.length) - 1;
            boolean minimal = true;
            int oneMore = 0;
            for (int part = 1; part < whole; part++) {
                if (cuts.contains(key(part))) {
                    minimal = false;
                    oneMore |= Integer.bitCount(part) == set.length - 1 ? whole & ~part : 0;
                }
            }
            if (!minimal && oneMore == 0) {
                return;
            }
            asked++;
            SetVerdict answer = trial.of(set.clone());
            if (answer == SetVerdict.UNTOLD) {
                untold.add(part(whole));
            } else if (minimal && answer == SetVerdict.LOST) {
                found.add(part(whole));
            } else if (answer == SetVerdict.LIVES) {
                for (int i = 0; i < set.length; i++) {
                    if ((oneMore & 1 << i) != 0) {
                        healings.add(new Healing(part(whole & ~(1 << i)), set[i]));
                    }
                }
            }
        }

        private long key(int part) {
            long key = 0;
            for (int i = 0; i < set.length; i++) {
                if ((part & 1 << i) != 0) {
                    key = key << EVENT_BITS | set[i] + 1;
                }
            }
            return key;
        }

        private List<Integer> part(int part) {
            return IntStream.range(0, set.length)
                    .filter(i -> (part & 1 << i) != 0)
                    .mapToObj(i -> set[i])
                    .toList();
        }
    }
}

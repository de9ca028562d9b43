package stillturning.story.timeline;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Locale;
import java.util.function.IntFunction;
import java.util.stream.Collectors;

/** The last flips of devices, and the shortest round that they repeat. */
final class FlipCycle {

    /** As many as any round is looked for in. */
    private static final int REMEMBERED = 2400;

    private record Flip(int device, double seconds) {}

    private final Deque<Flip> flips = new ArrayDeque<>();

    void flipped(int device, double seconds) {
        if (flips.size() == REMEMBERED) {
            flips.removeFirst();
        }
        flips.addLast(new Flip(device, seconds));
    }

    /** Who flips with whom, how often, and how long a round takes. */
    String inWords(IntFunction<String> nameOf) {
        List<Flip> seen = new ArrayList<>(flips);
        int round = round(seen);
        int last = seen.size() - 1;
        String members =
                seen.subList(seen.size() - round, seen.size()).stream()
                        .map(f -> nameOf.apply(f.device))
                        .distinct()
                        .sorted()
                        .collect(Collectors.joining(", "));
        int rounds = rounds(seen, round);
        double seconds = seen.get(last).seconds - seen.get(last - round * (rounds - 1)).seconds;
        double period = rounds > 1 ? seconds / (rounds - 1) : 0;
        return members
                + (period > 0
                        ? String.format(Locale.ROOT, ", every %.3g s", period)
                        : ", all at one instant")
                + ", "
                + rounds
                + " times";
    }

    /** Length of the shortest round that the last flips repeat at least once; else all of them. */
    private static int round(List<Flip> seen) {
        for (int length = 1; 2 * length <= seen.size(); length++) {
            if (rounds(seen, length) > 1) {
                return length;
            }
        }
        return seen.size();
    }

    /** How often the last flips repeat with this length. */
    private static int rounds(List<Flip> seen, int length) {
        int same = 0;
        for (int i = seen.size() - 1 - length;
                i >= 0 && seen.get(i).device == seen.get(i + length).device;
                i--) {
            same++;
        }
        return 1 + same / length;
    }
}

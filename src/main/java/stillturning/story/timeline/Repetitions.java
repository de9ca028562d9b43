package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/**
 * Keeps the list of a story's events short: of rounds that come again and again the first is told,
 * and the last where the engine has a part in it; one line between says how many more there are.
 * What is long without rounds is cut in the middle.
 */
final class Repetitions {

    /** Fewer rounds are told one by one. */
    private static final int LEAST_ROUNDS = 5;

    /** The longest round that is looked for: a contactor and all that it feeds. */
    private static final int LONGEST_ROUND = 200;

    /** Events that are told before and after what is cut out. */
    private static final int BEGINNING = 600;

    private static final int END = 400;

    private final List<StoryEvent> all;
    private final List<StoryEvent> told = new ArrayList<>();

    /** Where each event is told, or the line that stands for it. */
    private final int[] place;

    private Repetitions(List<StoryEvent> all) {
        this.all = all;
        this.place = new int[all.size()];
    }

    /** The same events, in order, without what only repeats; causes follow. */
    static List<StoryEvent> shortened(List<StoryEvent> all) {
        List<StoryEvent> once = all.size() < LEAST_ROUNDS ? all : new Repetitions(all).rounds();
        return once.size() <= BEGINNING + END ? once : new Repetitions(once).cut();
    }

    private List<StoryEvent> rounds() {
        for (int at = 0; at < all.size(); ) {
            int length = roundAt(at);
            int rounds = length == 0 ? 1 : rounds(at, length);
            if (rounds < LEAST_ROUNDS) {
                tell(at++);
                continue;
            }
            int last = at + (rounds - 1) * length;
            boolean closing = engineIn(last, length);
            tell(at, at + length);
            leaveOut(at + length, closing ? last : last + length, length);
            at = last + length;
            if (closing) {
                tell(last, at);
            }
        }
        return List.copyOf(told);
    }

    /** Shortest round that begins here and comes often enough; 0 for none. */
    private int roundAt(int at) {
        int most = Math.min(LONGEST_ROUND, (all.size() - at) / LEAST_ROUNDS);
        for (int length = 1; length <= most; length++) {
            if (alike(at, at + length) && rounds(at, length) >= LEAST_ROUNDS) {
                return length;
            }
        }
        return 0;
    }

    private int rounds(int at, int length) {
        int same = at;
        while (same + length < all.size() && alike(same, same + length)) {
            same++;
        }
        return 1 + (same - at) / length;
    }

    /** A failure, the pilot's moves and phases are never one of many. */
    private boolean alike(int one, int other) {
        StoryEvent a = all.get(one);
        StoryEvent b = all.get(other);
        return a.kind() == b.kind()
                && a.part().equals(b.part())
                && a.kind() != Kind.FAILURE
                && a.kind() != Kind.PILOT
                && a.kind() != Kind.PHASE
                && a.kind() != Kind.CHATTER;
    }

    private boolean engineIn(int from, int length) {
        return all.subList(from, from + length).stream()
                .anyMatch(
                        e ->
                                e.kind() == Kind.ENGINE_STOPS
                                        || e.kind() == Kind.ENGINE_RESTARTS
                                        || e.kind() == Kind.ENGINE_INTERRUPTED
                                        || e.kind() == Kind.ENGINE_RECOVERS);
    }

    private void leaveOut(int from, int to, int length) {
        StoryEvent first = all.get(from);
        double every = first.seconds() - all.get(from - length).seconds();
        int more = (to - from) / length;
        String words =
                every == 0
                        ? String.format(Locale.ROOT, "the same %d times more at once", more)
                        : String.format(
                                Locale.ROOT,
                                "the same %d times more, every %.3g s, until %.3f s",
                                more,
                                every,
                                all.get(to - 1).seconds());
        stand(from, to, words);
    }

    private List<StoryEvent> cut() {
        int resumed = all.size() - END;
        tell(0, BEGINNING);
        stand(BEGINNING, resumed, (resumed - BEGINNING) + " events more, which are left out here");
        tell(resumed, all.size());
        return List.copyOf(told);
    }

    private void stand(int from, int to, String words) {
        StoryEvent first = all.get(from);
        for (int i = from; i < to; i++) {
            place[i] = told.size();
        }
        told.add(new StoryEvent(first.seconds(), Kind.REPEATS, first.part(), words, cause(first)));
    }

    private void tell(int from, int to) {
        for (int i = from; i < to; i++) {
            tell(i);
        }
    }

    private void tell(int i) {
        StoryEvent event = all.get(i);
        place[i] = told.size();
        told.add(
                new StoryEvent(
                        event.seconds(), event.kind(), event.part(), event.words(), cause(event)));
    }

    private int cause(StoryEvent event) {
        return event.cause() < 0 ? -1 : place[event.cause()];
    }
}

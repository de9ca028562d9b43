package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import stillturning.model.failure.Failure;
import stillturning.story.Endurance;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;

/** A story, or why there is none, up to the first number in it. */
record Told(List<StoryEvent> happenings, List<Endurance> endurance, String refusal) {

    static Told of(Timeline timeline, Failure failure, Setting setting, double horizonSeconds) {
        try {
            Story story = timeline.tell(failure, setting, horizonSeconds);
            return new Told(story.happenings(), List.of(story.engine().endurance()), "");
        } catch (UntoldStory e) {
            return new Told(
                    List.of(), List.of(), String.valueOf(e.getMessage()).replaceAll("\\d.*", ""));
        }
    }

    Told byPart() {
        List<StoryEvent> sorted = new ArrayList<>(happenings);
        sorted.sort(
                Comparator.comparing((StoryEvent h) -> h.part() + h.kind())
                        .thenComparing(StoryEvent::seconds));
        return new Told(sorted, endurance, refusal);
    }

    /**
     * Holds that the same happened in the same order.
     *
     * @param relative what a time may be off, beside two nanoseconds (part of it)
     */
    static void assertSame(Told one, Told other, double relative, String where) {
        assertSame(one, other, relative, 2e-9, where);
    }

    /** The same, where a time may be off by so many seconds besides. */
    static void assertSame(Told one, Told other, double relative, double absolute, String where) {
        assertEquals(one.refusal, other.refusal, where);
        String all = where + "\n" + lines(one) + "\nagainst\n" + lines(other);
        assertEquals(one.happenings.size(), other.happenings.size(), all);
        for (int i = 0; i < one.happenings.size(); i++) {
            StoryEvent a = one.happenings.get(i);
            StoryEvent b = other.happenings.get(i);
            assertEquals(a.kind() + " " + a.part(), b.kind() + " " + b.part(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + absolute, a + all);
        }
        for (int i = 0; i < one.endurance.size(); i++) {
            Endurance a = one.endurance.get(i);
            Endurance b = other.endurance.get(i);
            assertEquals(a.getClass(), b.getClass(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + absolute, all);
        }
    }

    /** Whether it tells the same up to the engine's last stop, with which the other is over. */
    boolean endsOnlyLaterThan(Told other) {
        int shared = other.happenings.size();
        if (shared == 0 || shared >= happenings.size()) {
            return false;
        }
        boolean stopped = other.happenings.get(shared - 1).kind() == StoryEvent.Kind.ENGINE_STOPS;
        boolean staysStopped =
                happenings.stream()
                        .skip(shared)
                        .noneMatch(h -> h.kind() == StoryEvent.Kind.ENGINE_RESTARTS);
        return stopped
                && staysStopped
                && kinds(happenings.subList(0, shared)).equals(kinds(other.happenings));
    }

    private static List<String> kinds(List<StoryEvent> happenings) {
        return happenings.stream().map(h -> h.kind() + " " + h.part()).toList();
    }

    /**
     * By how much the times of the same events differ at most (part of them).
     *
     * @param nothing what a time may be off without counting (s)
     */
    static double farthest(Told one, Told other, double nothing) {
        double worst = 0;
        for (int i = 0; i < one.happenings.size(); i++) {
            double seconds = one.happenings.get(i).seconds();
            double off = Math.abs(seconds - other.happenings.get(i).seconds());
            worst = Math.max(worst, off > nothing ? off / seconds : 0);
        }
        return worst;
    }

    private static String lines(Told told) {
        StringBuilder lines = new StringBuilder();
        told.happenings.forEach(h -> lines.append(h).append('\n'));
        return lines.append(told.endurance).toString();
    }
}

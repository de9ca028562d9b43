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
        assertEquals(one.refusal, other.refusal, where);
        String all = where + "\n" + lines(one) + "\nagainst\n" + lines(other);
        assertEquals(one.happenings.size(), other.happenings.size(), all);
        for (int i = 0; i < one.happenings.size(); i++) {
            StoryEvent a = one.happenings.get(i);
            StoryEvent b = other.happenings.get(i);
            assertEquals(a.kind() + " " + a.part(), b.kind() + " " + b.part(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + 2e-9, a + all);
        }
        for (int i = 0; i < one.endurance.size(); i++) {
            Endurance a = one.endurance.get(i);
            Endurance b = other.endurance.get(i);
            assertEquals(a.getClass(), b.getClass(), all);
            assertEquals(a.seconds(), b.seconds(), relative * a.seconds() + 2e-9, all);
        }
    }

    /** By how much the times of the same events differ at most (part of them). */
    static double farthest(Told one, Told other) {
        double worst = 0;
        for (int i = 0; i < one.happenings.size(); i++) {
            double seconds = one.happenings.get(i).seconds();
            double off = Math.abs(seconds - other.happenings.get(i).seconds());
            worst = Math.max(worst, off > 2e-9 ? off / seconds : 0);
        }
        return worst;
    }

    private static String lines(Told told) {
        StringBuilder lines = new StringBuilder();
        told.happenings.forEach(h -> lines.append(h).append('\n'));
        return lines.append(told.endurance).toString();
    }
}

package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;

/**
 * Whole stories, played in time by an independent general circuit simulator as well; origin and
 * version stand in the head of the data file, and the script beside it makes or checks it anew.
 */
class TransientReferenceTest {
    private static final double RELATIVE_VOLTS = 1e-6;
    private static final double ABSOLUTE_VOLTS = 1e-6;
    private static final double CHARGE = 1e-6;
    private static final double RELATIVE_SECONDS = 1e-5;

    private static final Setting PLANNED = Setting.with(Pilot.PLANNED);

    static Stream<TransientCase> cases() {
        return TransientCase.read("transients/stories.txt").stream();
    }

    @ParameterizedTest
    @MethodSource("cases")
    void voltagesAndChargesAgreeAtEachTime(TransientCase reference) throws UntoldStory {
        Timeline timeline = reference.timeline();
        TreeSet<String> times = new TreeSet<>();
        reference.lines("volts").forEach(words -> times.add(words[1]));
        for (String time : times) {
            double seconds = Double.parseDouble(time);
            Story story = timeline.tell(reference.failure(), PLANNED, seconds);
            assertEquals(seconds, story.endSeconds(), "is told up to then");
            for (String[] words : at(time, reference.lines("volts"))) {
                double expected = Double.parseDouble(words[3]);
                assertEquals(
                        expected,
                        last(story, words),
                        ABSOLUTE_VOLTS + RELATIVE_VOLTS * expected,
                        said(words));
            }
            for (String[] words : at(time, reference.lines("charge"))) {
                double expected = Double.parseDouble(words[3]);
                assertEquals(expected, last(story, words) / 100, CHARGE, said(words));
            }
        }
    }

    private static List<String[]> at(String time, List<String[]> lines) {
        return lines.stream().filter(words -> words[1].equals(time)).toList();
    }

    private static double last(Story story, String[] words) {
        return Telling.last(Telling.trace(story, words[2]));
    }

    private static String said(String[] words) {
        return String.join(" ", words);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void whatHappensHappensThen(TransientCase reference) throws UntoldStory {
        Story story = reference.timeline().tell(reference.failure(), PLANNED);
        Map<String, Iterator<Double>> times = new HashMap<>();
        for (String[] words : reference.lines("happens")) {
            double expected = Double.parseDouble(words[3]);
            Iterator<Double> next =
                    times.computeIfAbsent(words[1] + " " + words[2], of -> times(story, words));
            assertTrue(next.hasNext(), said(words));
            assertEquals(expected, next.next(), RELATIVE_SECONDS * expected, said(words));
        }
        times.forEach((of, rest) -> assertFalse(rest.hasNext(), of + " happens once more"));
    }

    private static Iterator<Double> times(Story story, String[] words) {
        return story.of(Kind.valueOf(words[1])).stream()
                .filter(event -> event.part().equals(words[2]))
                .map(StoryEvent::seconds)
                .iterator();
    }

    @Test
    void theReferenceIsLargeEnoughToMeanSomething() {
        List<TransientCase> all = cases().toList();
        assertTrue(all.stream().filter(c -> !c.toString().startsWith("random")).count() >= 15);
        assertTrue(all.stream().filter(c -> c.toString().startsWith("random")).count() >= 20);
        assertTrue(all.stream().flatMap(c -> c.lines("happens").stream()).count() >= 14);
    }
}

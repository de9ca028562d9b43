package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import stillturning.bench.Bench;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.Trace;
import stillturning.story.Trace.TracePoint;
import stillturning.story.UntoldStory;

/** What tests of stories say again and again. */
final class Telling {
    private Telling() {}

    static Story unaided(Bench bench, String failure) throws UntoldStory {
        return bench.timeline().tell(bench.failure(failure), Pilot.NEVER);
    }

    static Story planned(Bench bench, String failure) throws UntoldStory {
        return bench.timeline().tell(bench.failure(failure), Pilot.PLANNED);
    }

    /** When something of a kind happens to a part, which it must do exactly once (s). */
    static double when(Story story, Kind kind, String part) {
        List<Double> times =
                story.of(kind).stream()
                        .filter(h -> h.part().equals(part))
                        .map(StoryEvent::seconds)
                        .toList();
        assertEquals(1, times.size(), kind + " of " + part + " in " + story.happenings());
        return times.get(0);
    }

    static int count(Story story, Kind kind) {
        return story.of(kind).size();
    }

    static Trace trace(Story story, String name) {
        return story.traces().stream()
                .filter(t -> t.name().equals(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no trace " + name));
    }

    static double last(Trace trace) {
        List<TracePoint> points = trace.points();
        return points.get(points.size() - 1).value();
    }
}

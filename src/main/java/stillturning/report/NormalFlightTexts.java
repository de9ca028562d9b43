package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.NothingBroken;
import stillturning.story.NormalFlight;

/** What happens in normal flight although nothing fails, in sentences. */
public final class NormalFlightTexts {

    /** Stands above such findings. */
    public static final String MEANING =
            "This happens although nothing fails and nobody acts. Cure it first: until then every"
                    + " failure seems to cause it.";

    private static final int NAMED = 5;

    private NormalFlightTexts() {}

    /** What flips without end as soon as the aircraft is switched on, each with what helps. */
    public static List<String> givenUp(NormalFlight normal) {
        return normal.givenUp().stream().map(h -> h.part() + " " + h.words()).toList();
    }

    /** What is given up, then the first events with their times; empty where nothing happens. */
    public static List<String> findings(NothingBroken flight) {
        List<String> lines = new ArrayList<>(givenUp(flight.normal()));
        lines.addAll(happenings(flight));
        return List.copyOf(lines);
    }

    /** The same without what was given up before. */
    public static List<String> happenings(NothingBroken flight) {
        if (flight.happenings().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        if (flight.normal().engineRuns() && !flight.engineRunsOn()) {
            lines.add(
                    "the electrical system keeps the engine running for "
                            + StoryFacts.endurance(flight.course())
                            + " only");
        }
        // the first line says that nothing fails
        List<EventLines.Line> told = EventLines.of(flight.course());
        List<EventLines.Line> events = told.subList(1, told.size());
        events.stream()
                .limit(NAMED)
                .forEach(e -> lines.add("after " + e.time() + ": " + e.event()));
        if (events.size() > NAMED) {
            lines.add("and " + (events.size() - NAMED) + " more events");
        }
        return List.copyOf(lines);
    }
}

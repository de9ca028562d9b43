package stillturning.report;

import java.util.ArrayList;
import java.util.List;
import stillturning.assess.NearLimit;
import stillturning.assess.NothingBroken;
import stillturning.story.NormalFlight;
import stillturning.story.StoryEvent;

/** What happens in normal flight although nothing fails, in sentences. */
public final class NormalFlightTexts {

    /** Stands above such findings. */
    public static final String MEANING =
            "This happens although nothing fails and nobody acts. Cure it first: until then every"
                    + " failure seems to cause it.";

    /** Heads what a protector may do although nothing fails. */
    public static final String NEAR_LIMIT = "Near its limit with nothing wrong";

    /** Stands above such findings. */
    public static final String NEAR_LIMIT_MEANING =
            "The loads of a flight in which nothing fails may be enough to open this protector. A"
                    + " run on the ground at less power need not show it.";

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
        List<String> lines = new ArrayList<>();
        flight.normal().lost().stream()
                .limit(NAMED)
                .forEach(e -> lines.add("as it is switched on, " + e.part() + " " + e.words()));
        if (flight.happenings().isEmpty()) {
            return List.copyOf(lines);
        }
        if (flight.normal().engineRuns() && !flight.engineRunsOn()) {
            lines.add(
                    "the electrical system keeps the engine running for "
                            + StoryFacts.endurance(flight.course())
                            + " only");
        }
        // the first line says that nothing fails
        List<EventLines.EventLine> told = EventLines.of(flight.course());
        addFirst(told.subList(1, told.size()), lines);
        return List.copyOf(lines);
    }

    /**
     * What opens in a flight with nothing wrong beside what {@link #findings} tells, and what then
     * becomes of the engine; empty where nothing does.
     */
    public static List<String> nearLimit(NothingBroken flight) {
        return flight.nearLimit().map(NormalFlightTexts::nearLimit).orElse(List.of());
    }

    private static List<String> nearLimit(NearLimit near) {
        List<String> lines = new ArrayList<>();
        String when =
                near.early()
                        ? "if protectors open as soon as their class allows, "
                        : "with protectors as they usually are, ";
        boolean stops = near.flight().engine().endurance().ends();
        String from = ", counted from the beginning of " + near.flight().moment().phase();
        lines.add(
                stops
                        ? when
                                + "the engine runs for "
                                + StoryFacts.endurance(near.flight())
                                + " only"
                                + from
                        : when + "the engine runs on without what this protector feeds");
        addFirst(
                EventLines.of(near.flight()).stream()
                        .dropWhile(e -> e.kind() != StoryEvent.Kind.PROTECTOR_OPENS)
                        .toList(),
                lines);
        return List.copyOf(lines);
    }

    private static void addFirst(List<EventLines.EventLine> events, List<String> lines) {
        events.stream()
                .limit(NAMED)
                .forEach(e -> lines.add("after " + e.time() + ": " + e.event()));
        if (events.size() > NAMED) {
            lines.add("and " + (events.size() - NAMED) + " more events");
        }
    }
}

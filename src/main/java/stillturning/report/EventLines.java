package stillturning.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import stillturning.quantity.Formats;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;

/** A story's events as numbered lines; loads that stop or come back together share one. */
public final class EventLines {

    private static final double MINUTE = 60;
    private static final double HOUR = 3600;

    /** Where several things do what was written of one. */
    private static final Map<String, String> PLURALS =
            Map.of("stops", "stop", "works", "work", "opens", "open", "is", "are", "goes", "go");

    /**
     * One line.
     *
     * @param seconds when (s)
     * @param because number of the line that led to it; 0 for none
     */
    public record EventLine(
            int number, double seconds, String time, Kind kind, String event, int because) {}

    private EventLines() {}

    /** The lines of a story, in order of time. */
    public static List<EventLine> of(Story story) {
        List<List<Integer>> groups = groups(story.happenings());
        Map<Integer, Integer> numberOf = new LinkedHashMap<>();
        for (int i = 0; i < groups.size(); i++) {
            int number = i + 1;
            groups.get(i).forEach(index -> numberOf.put(index, number));
        }
        List<EventLine> lines = new ArrayList<>();
        double before = Double.NaN;
        for (int i = 0; i < groups.size(); i++) {
            List<StoryEvent> together =
                    groups.get(i).stream().map(story.happenings()::get).toList();
            StoryEvent first = together.get(0);
            lines.add(
                    new EventLine(
                            i + 1,
                            first.seconds(),
                            time(first.seconds(), before),
                            first.kind(),
                            event(together),
                            numberOf.getOrDefault(first.cause(), 0)));
            before = first.seconds();
        }
        return List.copyOf(lines);
    }

    private static List<List<Integer>> groups(List<StoryEvent> happenings) {
        List<List<Integer>> groups = new ArrayList<>();
        for (int i = 0; i < happenings.size(); i++) {
            if (i > 0 && together(happenings.get(i - 1), happenings.get(i))) {
                groups.get(groups.size() - 1).add(i);
            } else {
                groups.add(new ArrayList<>(List.of(i)));
            }
        }
        return groups;
    }

    private static boolean together(StoryEvent one, StoryEvent next) {
        boolean loads =
                one.kind() == Kind.LOAD_STOPS
                        || one.kind() == Kind.LOAD_RESTARTS
                        || one.kind() == Kind.LOAD_ON_ITS_OWN
                        || one.kind() == Kind.LOAD_FED_AGAIN
                        || one.kind() == Kind.LOAD_DESTROYED;
        return loads
                && one.kind() == next.kind()
                && one.cause() == next.cause()
                && Math.abs(one.seconds() - next.seconds()) < 1e-6;
    }

    private static String event(List<StoryEvent> together) {
        Map<String, List<String>> partsByWords = new LinkedHashMap<>();
        together.forEach(
                h -> partsByWords.computeIfAbsent(h.words(), w -> new ArrayList<>()).add(h.part()));
        if (together.size() == 1) {
            return event(together.get(0));
        }
        return partsByWords.entrySet().stream()
                .map(e -> String.join(", ", e.getValue()) + " " + said(e.getKey(), e.getValue()))
                .collect(Collectors.joining("; "));
    }

    private static String said(String words, List<String> parts) {
        String verb = words.split("[ :]", 2)[0];
        return parts.size() > 1 && PLURALS.containsKey(verb)
                ? PLURALS.get(verb) + words.substring(verb.length())
                : words;
    }

    private static String event(StoryEvent happening) {
        return switch (happening.kind()) {
            case FAILURE, REPEATS -> happening.words();
            case CUE -> "pilot can see " + happening.part() + ": " + happening.words();
            case PILOT -> "pilot, by " + happening.part() + ": " + happening.words();
            case AUTOMATIC -> "by itself, " + happening.part() + ": " + happening.words();
            case PROTECTOR_OPENS,
                    WIRE_OVERHEATS,
                    WIRE_MELTS,
                    GUARD_SHORTS,
                    CONTACTS_CLOSE,
                    CONTACTS_OPEN,
                    LOAD_STARTS,
                    LOAD_STOPS,
                    LOAD_RESTARTS,
                    LOAD_ON_ITS_OWN,
                    LOAD_FED_AGAIN,
                    LOAD_DESTROYED,
                    BATTERY_EMPTY,
                    BATTERY_DISCONNECTS,
                    BATTERY_RECONNECTS,
                    BATTERY_GASSES,
                    CHARGING_BLOCKED,
                    CHARGING_ALLOWED,
                    BATTERIES_EQUALISE,
                    SOURCE_STARTS,
                    SOURCE_STOPS,
                    SOURCE_UNSTEADY,
                    LOAD_DUMP,
                    ENGINE_INTERRUPTED,
                    ENGINE_RECOVERS,
                    ENGINE_STOPS,
                    ENGINE_RESTARTS,
                    CHATTER,
                    PHASE,
                    CRANKING,
                    CRANKING_FAILS,
                    UNTOLD ->
                    happening.part() + " " + happening.words();
        };
    }

    /** A time (s) in a story; where it reads like the one before, the step from there (s). */
    private static String time(double seconds, double before) {
        String text = time(seconds);
        boolean alike = !Double.isNaN(before) && text.equals(time(before));
        return alike && seconds - before >= 5e-4 ? "+" + time(seconds - before) : text;
    }

    /** A time (s) as finely as an event is told. */
    public static String time(double seconds) {
        if (seconds == 0) {
            return "0 ms";
        }
        if (seconds < 0.9995) {
            return Formats.fixed(seconds * 1e3, seconds < 0.00995 ? 1 : 0) + " ms";
        }
        if (seconds < HOUR && seconds >= MINUTE - 0.5) {
            long whole = Math.round(seconds);
            return whole / 60 + " min" + (whole % 60 == 0 ? "" : " " + whole % 60 + " s");
        }
        return Formats.duration(seconds);
    }
}

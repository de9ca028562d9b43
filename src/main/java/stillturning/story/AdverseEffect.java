package stillturning.story;

import java.util.ArrayList;
import java.util.List;

/**
 * What moving a lever must not bring about, whatever else it is for.
 *
 * @param step step of the rehearsal, counted from 0
 * @param moves how many moves of the step had been made
 * @param lever the last lever moved
 * @param event what happened
 */
public record AdverseEffect(int step, int moves, String lever, StoryEvent event) {

    /** Whether such an event is harm: to the engine, to an alternator, to what is supplied. */
    public static boolean is(StoryEvent.Kind kind) {
        return switch (kind) {
            case ENGINE_INTERRUPTED,
                    ENGINE_STOPS,
                    LOAD_DESTROYED,
                    LOAD_DUMP,
                    SOURCE_UNSTEADY,
                    PROTECTOR_OPENS,
                    WIRE_OVERHEATS,
                    WIRE_MELTS,
                    GUARD_SHORTS,
                    BATTERY_DISCONNECTS,
                    CHATTER,
                    UNTOLD ->
                    true;
            case FAILURE,
                    CONTACTS_CLOSE,
                    CONTACTS_OPEN,
                    LOAD_STARTS,
                    LOAD_STOPS,
                    LOAD_RESTARTS,
                    LOAD_ON_ITS_OWN,
                    LOAD_FED_AGAIN,
                    BATTERY_EMPTY,
                    BATTERY_RECONNECTS,
                    BATTERY_GASSES,
                    CHARGING_BLOCKED,
                    CHARGING_ALLOWED,
                    BATTERIES_EQUALISE,
                    SOURCE_STARTS,
                    SOURCE_STOPS,
                    CUE,
                    PILOT,
                    AUTOMATIC,
                    ENGINE_RECOVERS,
                    ENGINE_RESTARTS,
                    PHASE,
                    CRANKING,
                    CRANKING_FAILS,
                    REPEATS ->
                    false;
        };
    }

    /**
     * Harm that a hand's moves do in a story: what happens from its first move until the state
     * after its last has lasted a while, in order of time.
     *
     * @param who procedure that makes them; {@link #COCKPIT} for a drill
     */
    public static List<StoryEvent> of(Story story, String who) {
        List<StoryEvent> mine =
                story.of(StoryEvent.Kind.PILOT).stream().filter(h -> h.part().equals(who)).toList();
        if (mine.isEmpty()) {
            return List.of();
        }
        double from = mine.get(0).seconds();
        double until = mine.get(mine.size() - 1).seconds() + SHOWN_SECONDS;
        List<StoryEvent> harm = new ArrayList<>();
        boolean begun = false;
        for (StoryEvent event : story.happenings()) {
            begun |= event.equals(mine.get(0));
            if (begun && is(event.kind()) && event.seconds() >= from && event.seconds() <= until) {
                harm.add(event);
            }
        }
        return List.copyOf(harm);
    }

    /** Who makes the moves of a drill. */
    public static final String COCKPIT = "cockpit";

    /**
     * How long a state must last until what it does to engine and loads has shown (s): longer than
     * any ride-through or any time of withstanding. A guess.
     */
    private static final double SHOWN_SECONDS = 5;

    /** In words: {@code "alternator loses its battery while …, after main off"}. */
    public String words() {
        return event.part() + " " + event.words();
    }
}

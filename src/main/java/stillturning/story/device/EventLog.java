package stillturning.story.device;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import stillturning.story.StoryEvent;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.TripContest;

/** Writes the story's events down, each with what led to it. */
public final class EventLog {

    /** What voltages and currents do not notice. */
    private static final Set<Kind> IDLE =
            Set.copyOf(
                    EnumSet.of(
                            Kind.LOAD_STOPS,
                            Kind.WIRE_OVERHEATS,
                            Kind.LOAD_RESTARTS,
                            Kind.LOAD_ON_ITS_OWN,
                            Kind.LOAD_FED_AGAIN,
                            Kind.BATTERIES_EQUALISE,
                            Kind.BATTERY_GASSES,
                            Kind.CUE,
                            Kind.ENGINE_INTERRUPTED,
                            Kind.ENGINE_RECOVERS));

    private final List<StoryEvent> happenings = new ArrayList<>();
    private final List<TripContest> contests = new ArrayList<>();
    private int latestMove = -1;
    private int cause = -1;
    private Runnable told = () -> {};

    /** Has something done whenever an event has been written whose words tell what stands. */
    public void whenTold(Runnable action) {
        told = action;
    }

    public void write(double seconds, Kind kind, String part, String words, int ledBy) {
        if (!IDLE.contains(kind)) {
            latestMove = happenings.size();
        }
        happenings.add(new StoryEvent(seconds, kind, part, words, ledBy));
        told.run();
    }

    /** The parts to which such an event happened. */
    public Set<String> partsOf(Kind kind) {
        return happenings.stream()
                .filter(happening -> happening.kind() == kind)
                .map(StoryEvent::part)
                .collect(Collectors.toSet());
    }

    /** Index of the event that was written last. */
    public int latest() {
        return happenings.size() - 1;
    }

    /** Puts other words to an event, once the network that it led to is solved. */
    public void reword(int index, String words) {
        StoryEvent then = happenings.get(index);
        happenings.set(
                index,
                new StoryEvent(then.seconds(), then.kind(), then.part(), words, then.cause()));
        told.run();
    }

    /** The network was solved: the last event that it feels is the cause of what it does next. */
    public void solved() {
        cause = latestMove;
    }

    /** How many events have been written. */
    public int size() {
        return happenings.size();
    }

    /** Index of the event that the present voltages and currents go back to; -1 for none. */
    public int cause() {
        return cause;
    }

    /** Index of the last event that happened to one of these; that of the network for none. */
    public int latestOf(Collection<String> parts) {
        for (int i = happenings.size() - 1; i >= 0; i--) {
            if (parts.contains(happenings.get(i).part())) {
                return i;
            }
        }
        return cause;
    }

    /** Forgets everything, as what came before the story. */
    public void startAnew() {
        happenings.clear();
        contests.clear();
        latestMove = -1;
        cause = -1;
    }

    public List<StoryEvent> happenings() {
        return List.copyOf(happenings);
    }

    void write(TripContest contest) {
        contests.add(contest);
    }

    /** What gave way by too much current, and what might have instead, in order of time. */
    public List<TripContest> contests() {
        return List.copyOf(contests);
    }
}

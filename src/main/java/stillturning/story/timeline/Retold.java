package stillturning.story.timeline;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import stillturning.model.failure.Failure;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.timeline.wiring.Layouts.Left;

/**
 * Stories that were told of one failure and hold for others: those that leave the same circuit and
 * the same levers. May be asked by several threads at once.
 */
final class Retold {

    /**
     * The last are kept: who tells alike failures one after the other finds the story of the first.
     */
    private static final int MOST = 256;

    private final Map<Key, Story> known =
            Collections.synchronizedMap(
                    new LinkedHashMap<>() {
                        private static final long serialVersionUID = 1;

                        @Override
                        protected boolean removeEldestEntry(Map.Entry<Key, Story> eldest) {
                            return size() > MOST;
                        }
                    });

    /** What a failure leaves: the circuit, and what nobody's hand has broken. */
    private record Leaves(
            Left circuit, Map<String, String> levers, Set<String> dark, Set<String> left) {}

    private record Key(Object leaves, Setting setting) {}

    /** Failures by what they leave, each group in the given order. */
    static Collection<List<Failure>> alike(
            List<Failure> failures, Function<Failure, Left> circuits) {
        Map<Object, List<Failure>> alike = new LinkedHashMap<>();
        for (Failure failure : failures) {
            Object leaves = leaves(failure, circuits.apply(failure));
            alike.computeIfAbsent(leaves, first -> new ArrayList<>()).add(failure);
        }
        return alike.values();
    }

    /** Equal for failures of which nothing but the name is told differently. */
    private static Object leaves(Failure failure, Left circuit) {
        // whose hand it was, and in which turn it moves, is told
        return failure.hits().isEmpty() || !failure.inTurn().isEmpty()
                ? failure
                : new Leaves(circuit, failure.levers(), failure.dark(), failure.left());
    }

    /** The failure's story, told now, or before of another that leaves the same. */
    Story story(Failure failure, Left circuit, Setting setting, Supplier<Story> telling) {
        Key key = new Key(leaves(failure, circuit), setting);
        Story story = known.get(key);
        if (story != null) {
            return of(failure, story);
        }
        Story told = telling.get();
        if (told.untold().isEmpty()) {
            known.put(key, told);
        }
        return told;
    }

    private static Story of(Failure failure, Story same) {
        if (failure.equals(same.failure())) {
            return same;
        }
        String part = Run.subject(failure);
        List<StoryEvent> happenings =
                same.happenings().stream()
                        .map(
                                event ->
                                        event.kind() == StoryEvent.Kind.FAILURE
                                                ? new StoryEvent(
                                                        event.seconds(),
                                                        event.kind(),
                                                        part,
                                                        failure.name(),
                                                        event.cause())
                                                : event)
                        .toList();
        return new Story(
                failure,
                same.moment(),
                same.setting(),
                happenings,
                same.engine(),
                same.aftermath(),
                same.measured(),
                same.endSeconds());
    }
}

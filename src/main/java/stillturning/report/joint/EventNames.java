package stillturning.report.joint;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import stillturning.model.failure.Failure;
import stillturning.reliability.combined.Event;
import stillturning.reliability.combined.Event.EventKind;

/** What events are called, alone and many at once. */
final class EventNames {

    private static final int NAMED_IN_FULL = 2;
    private static final int FEW_MODES = 3;

    private final List<Event> events;
    private final UnaryOperator<String> called;

    /** By identifiers. */
    EventNames(List<Event> events) {
        this(events, part -> part);
    }

    /**
     * @param called what a part or an indicator is called
     */
    EventNames(List<Event> events, UnaryOperator<String> called) {
        this.events = List.copyOf(events);
        this.called = called;
    }

    String of(int event) {
        return part(event).isEmpty()
                ? events.get(event).name()
                : called.apply(part(event)) + ": " + mode(event);
    }

    /** All of them at once. */
    String together(Collection<Integer> set) {
        return set.stream().map(this::of).collect(Collectors.joining(" + "));
    }

    Event event(int number) {
        return events.get(number);
    }

    /** The part or indicator that fails; empty where it is not the own failure of one. */
    String part(int event) {
        Event one = events.get(event);
        return one.kind() == EventKind.FAILURE
                ? one.failure().hits().get(0).part()
                : one.deadLamp().orElse("");
    }

    /** How what {@link #part} names fails. */
    String mode(int event) {
        Event one = events.get(event);
        return one.deadLamp().isPresent()
                ? Failure.DEAD_LAMP
                : one.failure().hits().get(0).mode().name();
    }

    /** Events of which any one will do: named in full where there are few, else by their parts. */
    String anyOf(Collection<Integer> some) {
        if (some.size() <= NAMED_IN_FULL) {
            return some.stream().map(this::of).collect(Collectors.joining(", or "));
        }
        Map<String, Set<String>> modes = modes(some);
        Set<String> others =
                some.stream()
                        .filter(e -> part(e).isEmpty())
                        .map(this::of)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        Set<String> how =
                modes.values().stream()
                        .flatMap(Set::stream)
                        .collect(Collectors.toCollection(LinkedHashSet::new));
        if (modes.size() == 1 && others.isEmpty()) {
            return called.apply(modes.keySet().iterator().next()) + ": " + String.join("; ", how);
        }
        String parts =
                RunPartNames.listed(modes.keySet(), called)
                        + (how.isEmpty() || how.size() > FEW_MODES
                                ? ""
                                : ": " + String.join("; ", how));
        String named =
                parts.isEmpty() || others.isEmpty()
                        ? parts + String.join(", ", others)
                        : String.join(", ", others) + ", " + parts;
        return "any of " + some.size() + ": " + named;
    }

    private Map<String, Set<String>> modes(Collection<Integer> some) {
        Map<String, Set<String>> modes = new LinkedHashMap<>();
        for (int event : some) {
            if (!part(event).isEmpty()) {
                modes.computeIfAbsent(part(event), p -> new LinkedHashSet<>()).add(mode(event));
            }
        }
        return modes;
    }
}

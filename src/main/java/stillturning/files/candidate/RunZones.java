package stillturning.files.candidate;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import stillturning.files.candidate.CheckedStudy.Zones;
import stillturning.files.candidate.RunBuilder.PlannedRun;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.NewProtector;
import stillturning.files.entry.RunText.NewWire;
import stillturning.files.entry.RunText.RunItem;

/**
 * Where the things of one run sit. Only its ends and the parts that it leads through have a zone of
 * their own; what lies between two of them sits at one or the other, in the order that is written.
 * A protector before the wire sits where the wire starts, one behind it where it ends, and one
 * between two wires at the nearer end.
 */
final class RunZones {

    private final Placement placement;
    private final Zones zones;
    private final PlannedRun line;
    private final List<RunItem> items;

    /**
     * @param items what lies in the run, its unwritten wire included
     */
    RunZones(Placement placement, Zones zones, PlannedRun line, List<RunItem> items) {
        this.placement = placement;
        this.zones = zones;
        this.line = line;
        this.items = items;
    }

    /** Zone of each item in order: of a wire, that of its first end; empty where nothing says. */
    List<Optional<String>> all() {
        List<Optional<String>> found = new ArrayList<>();
        Optional<String> here = placement.zoneOf(line.from().part());
        for (int i = 0; i < items.size(); i++) {
            Optional<NamedTerminal> through = items.get(i).leadsThrough();
            if (through.isPresent()) {
                here = placement.zoneOf(through.get().part());
            }
            if (items.get(i) instanceof NewProtector && isAtTheFarEnd(i, here)) {
                here = farEnd(i);
            }
            found.add(here);
        }
        return found;
    }

    private boolean isAtTheFarEnd(int protector, Optional<String> start) {
        List<NewWire> before = wiresBefore(protector);
        List<NewWire> behind = wiresBehind(protector);
        if (before.isEmpty() || behind.isEmpty()) {
            return !before.isEmpty();
        }
        Optional<Double> way =
                start.flatMap(s -> farEnd(protector).flatMap(e -> zones.metres(s, e)));
        Optional<Double> metresBefore = metres(before).or(() -> rest(way, metres(behind)));
        Optional<Double> metresBehind = metres(behind).or(() -> rest(way, metres(before)));
        return metresBefore.isEmpty()
                || metresBehind.isEmpty()
                || metresBefore.get() >= metresBehind.get();
    }

    private static Optional<Double> rest(Optional<Double> way, Optional<Double> part) {
        return way.flatMap(w -> part.map(p -> Math.max(0, w - p)));
    }

    /** Length of wires (m), if all of it is written. */
    private static Optional<Double> metres(List<NewWire> wires) {
        return wires.stream().allMatch(w -> w.length().isPresent())
                ? Optional.of(
                        wires.stream()
                                .mapToDouble(w -> w.length().orElseThrow().quantity().si())
                                .sum())
                : Optional.empty();
    }

    private List<NewWire> wiresBefore(int at) {
        int start = at;
        while (start > 0 && items.get(start - 1).leadsThrough().isEmpty()) {
            start--;
        }
        return wires(start, at);
    }

    private List<NewWire> wiresBehind(int at) {
        return wires(at, firstThrough(at));
    }

    private List<NewWire> wires(int from, int to) {
        return items.subList(from, to).stream()
                .filter(NewWire.class::isInstance)
                .map(NewWire.class::cast)
                .toList();
    }

    private int firstThrough(int from) {
        int next = from;
        while (next < items.size() && items.get(next).leadsThrough().isEmpty()) {
            next++;
        }
        return next;
    }

    /** Zone of the next part that the run leads through, or of its end. */
    private Optional<String> farEnd(int item) {
        Optional<NamedTerminal> through =
                items.stream().skip(item).flatMap(i -> i.leadsThrough().stream()).findFirst();
        return placement.zoneOf(through.map(NamedTerminal::part).orElse(line.to().part()));
    }
}

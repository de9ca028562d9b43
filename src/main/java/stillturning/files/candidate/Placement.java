package stillturning.files.candidate;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import stillturning.files.entry.CandidateEntry;
import stillturning.files.entry.RunText;
import stillturning.files.entry.RunText.NamedTerminal;
import stillturning.files.entry.RunText.RunItem;
import stillturning.files.entry.RunText.Through;

/**
 * Where a candidate's parts sit, and how many lines arrive at each: what must be known before the
 * first part is made.
 */
final class Placement {

    private final CandidateEntry candidate;
    private final Map<String, String> zones = new HashMap<>();
    private final Map<String, Integer> arrivals = new LinkedHashMap<>();

    Placement(CandidateEntry candidate, CheckedStudy frame) {
        this.candidate = candidate;
        frame.written().forEach((id, load) -> zones.put(id, load.zone()));
        candidate.parts().forEach((id, part) -> part.zone().ifPresent(z -> zones.put(id, z)));
        inheritZones();
        countArrivals();
    }

    /** Zone of a part; one without a zone of its own sits in that of what comes before it. */
    Optional<String> zoneOf(String part) {
        return Optional.ofNullable(zones.get(part));
    }

    /** Names of the lines that end at a part without naming a terminal. */
    List<String> arrivalsAt(String part) {
        int count = arrivals.getOrDefault(part, 0);
        return count == 1
                ? List.of("feed")
                : IntStream.rangeClosed(1, count).mapToObj(n -> "feed-" + n).toList();
    }

    private void inheritZones() {
        int before;
        do {
            before = zones.size();
            candidate.links().values().forEach(this::inheritZones);
            candidate.feeds().values().forEach(this::inheritZones);
        } while (zones.size() > before);
    }

    private void inheritZones(RunText run) {
        Optional<String> zone = zoneOf(run.from().part());
        for (RunItem item : run.items()) {
            if (item instanceof Through through) {
                zone = inherit(through.anchor(), zone);
            }
        }
        if (run.to().isPresent()) {
            inherit(run.to().get(), zone);
        }
    }

    private Optional<String> inherit(NamedTerminal anchor, Optional<String> zone) {
        zone.ifPresent(z -> zones.putIfAbsent(anchor.part(), z));
        return zoneOf(anchor.part());
    }

    private void countArrivals() {
        candidate.links().values().forEach(this::countArrivals);
        candidate.feeds().values().forEach(this::countArrivals);
    }

    private void countArrivals(RunText run) {
        for (RunItem item : run.items()) {
            if (item instanceof Through through) {
                countArrival(through.anchor());
            }
        }
        run.to().ifPresent(this::countArrival);
    }

    private void countArrival(NamedTerminal at) {
        if (at.terminal().isEmpty()) {
            arrivals.merge(at.part(), 1, Integer::sum);
        }
    }
}

package stillturning.files.candidate;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import stillturning.files.entry.LoadEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.model.Candidate;
import stillturning.model.Installation.Laying;
import stillturning.model.LoadNeed;
import stillturning.model.Reach;
import stillturning.model.Study;

/**
 * What a study's file says, checked: everything that its candidates share.
 *
 * @param laying how wires lie that say nothing else
 * @param written every load of the file, whether or not it could be made
 * @param classes class of the parts of a kind that name none, by kind, where the file says it
 */
public record CheckedStudy(
        Study.StudyHeading heading,
        Study.Aircraft aircraft,
        Study.Goals goals,
        Zones zones,
        Laying laying,
        Map<String, LoadEntry> written,
        Map<String, String> classes) {

    /** The same, without a baseline that is none of these. */
    public CheckedStudy withBaselineAmong(List<Candidate> candidates) {
        boolean there =
                goals.baseline().isEmpty()
                        || candidates.stream().anyMatch(c -> goals.baseline().get().equals(c.id()));
        return there
                ? this
                : new CheckedStudy(
                        heading,
                        aircraft,
                        goals.withoutBaseline(),
                        zones,
                        laying,
                        written,
                        classes);
    }

    /** The same with other usual classes. */
    public CheckedStudy withClasses(Map<String, String> others) {
        Map<String, String> all = new LinkedHashMap<>(classes);
        all.putAll(others);
        return new CheckedStudy(heading, aircraft, goals, zones, laying, written, all);
    }

    Optional<LoadNeed> load(String id) {
        return aircraft.load(id);
    }

    Set<String> loadNames() {
        return written.keySet();
    }

    boolean needsForEngine(String load) {
        return aircraft.engine().logic().loads().contains(load);
    }

    /** Places in the aircraft, and how much wire it takes from one to another. */
    static final class Zones {

        /** A way on from a zone. */
        private record Way(String to, double metres) {}

        /** A zone that is reached, by the shortest way from where one started. */
        private record Reached(String zone, double metres, Optional<Reached> before) {
            Reached on(Way way) {
                return new Reached(way.to, metres + way.metres, Optional.of(this));
            }

            String last() {
                return before.map(Reached::zone).orElse("");
            }

            List<String> way() {
                Deque<String> zones = new ArrayDeque<>();
                for (Optional<Reached> at = Optional.of(this);
                        at.isPresent();
                        at = at.get().before) {
                    zones.addFirst(at.get().zone);
                }
                return List.copyOf(zones);
            }
        }

        private final Map<String, Double> across = new LinkedHashMap<>();
        private final Map<String, Reach> reach = new HashMap<>();
        private final Map<String, List<Way>> ways = new HashMap<>();
        private final boolean sound;

        // asked by several readers at once
        private final Map<String, Map<String, Reached>> shortest = new ConcurrentHashMap<>();

        Zones(StudyEntry study) {
            study.zones().forEach((name, z) -> across.put(name, z.across().quantity().si()));
            study.zones().forEach((name, z) -> z.reach().ifPresent(r -> reach.put(name, r)));
            sound =
                    study.distances().stream()
                            .allMatch(
                                    d ->
                                            across.containsKey(d.from())
                                                    && across.containsKey(d.to())
                                                    && !d.from().equals(d.to()));
            for (StudyEntry.Distance distance : study.distances()) {
                double metres = distance.length().quantity().si();
                add(distance.from(), distance.to(), metres);
                add(distance.to(), distance.from(), metres);
            }
        }

        private void add(String from, String to, double metres) {
            ways.computeIfAbsent(from, f -> new ArrayList<>()).add(new Way(to, metres));
        }

        /** Whether every distance leads from one known zone to another. */
        boolean isSound() {
            return sound;
        }

        Set<String> names() {
            return across.keySet();
        }

        /** From where the pilot can move what sits in a zone, if the study says it. */
        Optional<Reach> reach(String zone) {
            return Optional.ofNullable(reach.get(zone));
        }

        /** Length of wire (m) between two zones or inside one, by the shortest way there is. */
        Optional<Double> metres(String from, String to) {
            if (from.equals(to)) {
                return Optional.ofNullable(across.get(from));
            }
            return reached(from, to).map(Reached::metres);
        }

        /** Zones that the shortest way passes, both ends included; only these without a way. */
        List<String> way(String from, String to) {
            if (from.equals(to)) {
                return List.of(from);
            }
            return reached(from, to).map(Reached::way).orElse(List.of(from, to));
        }

        private Optional<Reached> reached(String from, String to) {
            return Optional.ofNullable(shortest.computeIfAbsent(from, this::shortest).get(to));
        }

        /** Dijkstra's algorithm; of equally short ways, by the zone whose name comes first. */
        private Map<String, Reached> shortest(String from) {
            Map<String, Reached> reached = new HashMap<>();
            PriorityQueue<Reached> open =
                    new PriorityQueue<>(
                            Comparator.comparingDouble(Reached::metres)
                                    .thenComparing(Reached::zone)
                                    .thenComparing(Reached::last));
            open.add(new Reached(from, 0, Optional.empty()));
            while (!open.isEmpty()) {
                Reached nearest = open.remove();
                if (reached.putIfAbsent(nearest.zone, nearest) == null) {
                    ways.getOrDefault(nearest.zone, List.of())
                            .forEach(way -> open.add(nearest.on(way)));
                }
            }
            return reached;
        }
    }
}

package stillturning.files;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import stillturning.files.entry.LoadEntry;
import stillturning.files.entry.StudyEntry;
import stillturning.model.LoadNeed;
import stillturning.model.Study;

/**
 * What a study's file says, checked: everything that its candidates share.
 *
 * @param written every load of the file, whether or not it could be made
 */
record Frame(
        Study.Heading heading,
        Study.Aircraft aircraft,
        Study.Goals goals,
        Zones zones,
        Map<String, LoadEntry> written) {

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

        /** A way on from a zone, or the length (m) of the way so far. */
        private record Way(String to, double metres) {}

        private final Map<String, Double> across = new LinkedHashMap<>();
        private final Map<String, List<Way>> ways = new HashMap<>();
        private final boolean sound;
        private final Map<String, Map<String, Double>> lengths = new HashMap<>();

        Zones(StudyEntry study) {
            study.zones().forEach((name, z) -> across.put(name, z.across().quantity().si()));
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

        /** Length of wire (m) between two zones or inside one, by the shortest way there is. */
        Optional<Double> metres(String from, String to) {
            if (from.equals(to)) {
                return Optional.ofNullable(across.get(from));
            }
            return Optional.ofNullable(lengths.computeIfAbsent(from, this::shortest).get(to));
        }

        /** Dijkstra's algorithm. */
        private Map<String, Double> shortest(String from) {
            Map<String, Double> reached = new HashMap<>();
            PriorityQueue<Way> open = new PriorityQueue<>(Comparator.comparingDouble(Way::metres));
            Set<String> done = new HashSet<>();
            open.add(new Way(from, 0));
            while (!open.isEmpty()) {
                Way nearest = open.remove();
                if (!done.add(nearest.to)) {
                    continue;
                }
                reached.put(nearest.to, nearest.metres);
                for (Way on : ways.getOrDefault(nearest.to, List.of())) {
                    open.add(new Way(on.to, nearest.metres + on.metres));
                }
            }
            return reached;
        }
    }
}

package stillturning.reliability.runup;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import stillturning.story.PilotView;

/**
 * Something that a pilot sees in one of several steps and would not see with nothing wrong, or the
 * other way round.
 *
 * @param step counted from 0
 * @param name cue or load; empty for the engine
 */
public record SeenDifference(int step, What what, String name)
        implements Comparable<SeenDifference> {

    /** What is different. */
    public enum What {
        ENGINE_STOPS,
        ENGINE_FALTERS,
        ENGINE_RUNS,
        LOAD_STOPS,
        LOAD_WORKS,
        LOAD_ON_ITS_OWN,
        LOAD_FED,
        CUE_SHOWS,
        CUE_DARK
    }

    /** All differences between two runs through the same steps. */
    static Set<SeenDifference> between(List<PilotView> expected, List<PilotView> seen) {
        Set<SeenDifference> all = new HashSet<>();
        for (int step = 0; step < expected.size(); step++) {
            PilotView usual = expected.get(step);
            PilotView now = seen.get(step);
            if (usual.engine() != now.engine()) {
                all.add(new SeenDifference(step, engine(now), ""));
            }
            add(step, usual.stopped(), now.stopped(), What.LOAD_STOPS, What.LOAD_WORKS, all);
            add(
                    step,
                    usual.onTheirOwn(),
                    now.onTheirOwn(),
                    What.LOAD_ON_ITS_OWN,
                    What.LOAD_FED,
                    all);
            add(step, usual.cues(), now.cues(), What.CUE_SHOWS, What.CUE_DARK, all);
        }
        return all;
    }

    private static What engine(PilotView sight) {
        return switch (sight.engine()) {
            case RUNS -> What.ENGINE_RUNS;
            case FALTERS -> What.ENGINE_FALTERS;
            case STOPS -> What.ENGINE_STOPS;
        };
    }

    private static void add(
            int step,
            Set<String> usual,
            Set<String> now,
            What more,
            What less,
            Set<SeenDifference> all) {
        now.stream()
                .filter(name -> !usual.contains(name))
                .forEach(name -> all.add(new SeenDifference(step, more, name)));
        usual.stream()
                .filter(name -> !now.contains(name))
                .forEach(name -> all.add(new SeenDifference(step, less, name)));
    }

    @Override
    public int compareTo(SeenDifference other) {
        int way = Integer.compare(step, other.step);
        way = way != 0 ? way : what.compareTo(other.what);
        return way != 0 ? way : name.compareTo(other.name);
    }
}

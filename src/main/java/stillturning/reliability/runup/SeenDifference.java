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
            all.addAll(of(step, What.LOAD_STOPS, usual.stopped(), now.stopped()));
            all.addAll(of(step, What.LOAD_WORKS, now.stopped(), usual.stopped()));
            all.addAll(of(step, What.LOAD_ON_ITS_OWN, usual.onTheirOwn(), now.onTheirOwn()));
            all.addAll(of(step, What.LOAD_FED, now.onTheirOwn(), usual.onTheirOwn()));
            all.addAll(of(step, What.CUE_SHOWS, usual.cues(), now.cues()));
            all.addAll(of(step, What.CUE_DARK, now.cues(), usual.cues()));
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

    /** What is among some names and not among others. */
    private static List<SeenDifference> of(
            int step, What what, Set<String> without, Set<String> with) {
        return with.stream()
                .filter(name -> !without.contains(name))
                .map(name -> new SeenDifference(step, what, name))
                .toList();
    }

    @Override
    public int compareTo(SeenDifference other) {
        int way = Integer.compare(step, other.step);
        way = way != 0 ? way : what.compareTo(other.what);
        return way != 0 ? way : name.compareTo(other.name);
    }
}

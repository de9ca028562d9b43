package stillturning.assess;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import stillturning.assess.SheddingEndurances.Best;
import stillturning.model.EngineLogic;
import stillturning.model.LoadNeed;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Endurance;
import stillturning.story.Setting;
import stillturning.story.Setting.Shedding;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/**
 * What the engine can spare after a failure, and how long it then runs. All that its logic does not
 * name is off. Of what it names, everything may stay on, or just enough of what is still alive: of
 * two pumps the one that works, whichever it is. What the procedures do is tried as well, so that
 * the best is never worse than that.
 */
final class BestShedding {

    /** Sets of just enough that are tried; an engine of two lanes and two pumps has four. */
    private static final int MOST_SETS = 32;

    private final Study study;
    private final Timeline timeline;

    BestShedding(Study study, Timeline timeline) {
        this.study = study;
        this.timeline = timeline;
    }

    /**
     * The longest; of two as long, the one with less off.
     *
     * @param asWritten what the procedures make of it
     */
    Best of(Failure failure, Setting written, Endurance asWritten) throws UntoldStory {
        Best best = new Best(asWritten, List.of());
        Set<String> named = new LinkedHashSet<>(logic().loads());
        Story all = timeline.tell(failure, written.with(Shedding.of(allBut(named))));
        best = better(best, new Best(all.engine().endurance(), List.of()));
        Set<String> alive = new LinkedHashSet<>(named);
        alive.retainAll(all.aftermath().working());
        for (Set<String> enough : justEnough(alive)) {
            Story story = timeline.tell(failure, written.with(Shedding.of(allBut(enough))));
            List<String> spared = named.stream().filter(load -> !enough.contains(load)).toList();
            best = better(best, new Best(story.engine().endurance(), spared));
        }
        return best;
    }

    private EngineLogic logic() {
        return study.aircraft().engine().logic();
    }

    private static Best better(Best one, Best other) {
        return other.endurance().seconds() > one.endurance().seconds() ? other : one;
    }

    private Set<String> allBut(Set<String> on) {
        Set<String> off = new HashSet<>();
        for (LoadNeed load : study.aircraft().loads()) {
            if (!on.contains(load.id())) {
                off.add(load.id());
            }
        }
        return off;
    }

    /** Sets of these of which none can be missed, each once; none if all together are too few. */
    List<Set<String>> justEnough(Set<String> alive) {
        List<Set<String>> found = new ArrayList<>();
        if (logic().runsOn(alive::contains)) {
            without(List.copyOf(alive), 0, alive, found);
        }
        return found;
    }

    /** Leaves out one after the other, in their order, so that no set is met twice. */
    private void without(List<String> all, int from, Set<String> on, List<Set<String>> found) {
        for (int i = from; i < all.size() && found.size() < MOST_SETS; i++) {
            Set<String> fewer = new LinkedHashSet<>(on);
            fewer.remove(all.get(i));
            if (logic().runsOn(fewer::contains)) {
                without(all, i + 1, fewer, found);
            }
        }
        boolean least =
                on.stream().noneMatch(one -> logic().runsOn(l -> on.contains(l) && !l.equals(one)));
        if (least && found.size() < MOST_SETS) {
            found.add(on);
        }
    }
}

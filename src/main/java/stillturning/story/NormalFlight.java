package stillturning.story;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import stillturning.story.Story.Feed;

/**
 * A candidate in normal flight, nothing wrong.
 *
 * @param engineRuns whether the engine's needs are met
 * @param working loads that work
 * @param feeds which source can reach which input of a load
 * @param cuesShowing cues that show although nothing is wrong
 * @param busVolts voltage of each bus (V)
 * @param sourceAmps current that each source delivers (A), negative while it takes in
 * @param givenUp what flipped to and fro without end before it came to rest, and is counted as
 *     given up since
 * @param lost what went off or gave way before it came to rest, and stays away
 */
public record NormalFlight(
        boolean engineRuns,
        Set<String> working,
        Set<Feed> feeds,
        List<String> cuesShowing,
        Map<String, Double> busVolts,
        Map<String, Double> sourceAmps,
        List<StoryEvent> givenUp,
        List<StoryEvent> lost) {

    public NormalFlight {
        working = Set.copyOf(working);
        feeds = Set.copyOf(feeds);
        cuesShowing = List.copyOf(cuesShowing);
        givenUp = List.copyOf(givenUp);
        lost = List.copyOf(lost);
    }

    /** The same with more that went off or stays away. */
    public NormalFlight andLost(List<StoryEvent> more) {
        List<StoryEvent> all = new ArrayList<>(lost);
        all.addAll(more);
        return new NormalFlight(
                engineRuns, working, feeds, cuesShowing, busVolts, sourceAmps, givenUp, all);
    }

    /**
     * The refusal of a candidate whose engine does not even run with nothing wrong.
     *
     * @param needs loads that the engine's logic names
     */
    public UntoldStory neverRan(List<String> needs) {
        return new UntoldStory(
                "the engine does not run in normal flight; without supply: "
                        + needs.stream()
                                .filter(load -> !working.contains(load))
                                .reduce((a, b) -> a + ", " + b)
                                .orElse("nothing that it needs")
                        + lost.stream()
                                .findFirst()
                                .map(e -> "; first " + e.part() + " " + e.words())
                                .orElse(""));
    }
}

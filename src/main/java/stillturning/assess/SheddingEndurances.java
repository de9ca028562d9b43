package stillturning.assess;

import java.util.List;
import java.util.Optional;
import stillturning.story.Endurance;

/**
 * How long the engine runs after one failure, by what is switched off.
 *
 * @param sheddingNothing everybody acts as written, but no load is switched off
 * @param asWritten the pilot and the automatics act as written
 * @param best the longest that switching off what the engine can spare makes of it, which is never
 *     worse than as written
 * @param worstPlaced as written, loads that are used now and then running in one block at the worst
 *     time; empty where there are none, or where nothing ends the engine
 */
public record SheddingEndurances(
        Endurance sheddingNothing,
        Endurance asWritten,
        Best best,
        Optional<WorstPlace> worstPlaced) {

    /**
     * The best that was found.
     *
     * @param spared loads named by the engine's logic that are off too, since others do their work;
     *     in the order of the logic
     */
    public record Best(Endurance endurance, List<String> spared) {
        public Best {
            spared = List.copyOf(spared);
        }
    }

    /**
     * The worst place of the block.
     *
     * @param fromSeconds when it begins (s)
     */
    public record WorstPlace(double fromSeconds, Endurance endurance) {}
}

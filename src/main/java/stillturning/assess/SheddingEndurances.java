package stillturning.assess;

import java.util.Optional;
import stillturning.story.Endurance;

/**
 * How long the engine runs after one failure, by what is switched off.
 *
 * @param sheddingNothing everybody acts as written, but no load is switched off
 * @param asWritten the pilot and the automatics act as written
 * @param best everything that the engine does not need is off at once
 * @param worstPlaced as written, loads that are used now and then running in one block at the worst
 *     time; empty where there are none, or where nothing ends the engine
 */
public record SheddingEndurances(
        Endurance sheddingNothing,
        Endurance asWritten,
        Endurance best,
        Optional<Placed> worstPlaced) {

    /**
     * The worst place of the block.
     *
     * @param fromSeconds when it begins (s)
     */
    public record Placed(double fromSeconds, Endurance endurance) {}
}

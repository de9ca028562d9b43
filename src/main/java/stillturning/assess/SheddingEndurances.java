package stillturning.assess;

import java.util.List;
import java.util.Optional;
import java.util.function.DoubleFunction;
import stillturning.story.Endurance;

/**
 * How long the engine runs after one failure, by what is switched off.
 *
 * @param sheddingNothing everybody acts as written, but nothing is shed and no breaker pulled; a
 *     switch that a procedure moves is moved, and may take a load with it
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
    public record WorstPlace(double fromSeconds, Endurance endurance) {

        /** A place is found to this part of the whole time. */
        private static final double PARTS = 4096;

        /**
         * The first place of the run that the engine does not outlive. As long as the run fits in,
         * it hardly matters where it is; so a run that ends just when the engine did is tried, then
         * one a hair later, and now and then one half way.
         *
         * @param atOnce the run at the beginning, which the engine outlives
         * @param wholeSeconds how long the engine lasts if the run is spread over all of it (s)
         * @param runSeconds how long the run lasts (s)
         * @param placed what comes of a run that begins at a time (s)
         */
        static WorstPlace first(
                WorstPlace atOnce,
                double wholeSeconds,
                double runSeconds,
                DoubleFunction<WorstPlace> placed) {
            double within = wholeSeconds / PARTS;
            WorstPlace lives = atOnce;
            WorstPlace dies = placed.apply(wholeSeconds);
            for (int n = 0; dies.fromSeconds() - lives.fromSeconds() > within; n++) {
                double wide = dies.fromSeconds() - lives.fromSeconds();
                double hair = Math.min(wide, within) / 2;
                double foretold = spareSeconds(lives, runSeconds) + (n % 2 == 0 ? 0 : hair);
                double next =
                        n % 4 == 3 ? wide / 2 : Math.max(hair, Math.min(foretold, wide - hair));
                WorstPlace there = placed.apply(lives.fromSeconds() + next);
                if (spareSeconds(there, runSeconds) > 0) {
                    lives = there;
                } else {
                    dies = there;
                }
            }
            return dies;
        }

        /** How long the engine outlives the run (s); at or below 0 where it does not. */
        private static double spareSeconds(WorstPlace place, double runSeconds) {
            return place.endurance().seconds() - (place.fromSeconds() + runSeconds);
        }
    }
}

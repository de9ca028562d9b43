package stillturning.story;

import java.util.Set;

/**
 * What a pilot can notice at the end of a stretch of time.
 *
 * @param cues those that show
 * @param stopped loads that do not work and whose stopping he notices without a lamp
 * @param onTheirOwn loads that work on a battery of their own, where he would notice their stopping
 * @param engine what it has done on the way
 */
public record PilotView(
        Set<String> cues, Set<String> stopped, Set<String> onTheirOwn, EngineSound engine) {

    /** A falter that is shorter than this goes unnoticed (s). A guess. */
    public static final double NOTICED_SECONDS = 0.3;

    /** What he hears of the engine. */
    public enum EngineSound {
        RUNS("runs on"),
        FALTERS("falters"),
        STOPS("stops");

        private final String words;

        EngineSound(String words) {
            this.words = words;
        }

        /** In words. */
        public String words() {
            return words;
        }
    }

    public PilotView {
        cues = Set.copyOf(cues);
        stopped = Set.copyOf(stopped);
        onTheirOwn = Set.copyOf(onTheirOwn);
    }
}

package stillturning.model;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the pilot, or an automatic, does about a cue.
 *
 * @param when names of the cues, any of which starts it
 * @param responseSeconds time from the cue to the moves (s)
 * @param moves position by lever
 * @param sheds loads switched off at their own switches
 * @param execution who does it, and how fast
 */
public record Procedure(
        String name,
        List<String> when,
        double responseSeconds,
        Map<String, String> moves,
        List<String> sheds,
        Execution execution) {

    /**
     * Who does it, and how fast.
     *
     * @param automatic part or load that does it by itself while it works; empty for the pilot
     * @param eachSeconds time from one load to the next, in the order of their ranks and only while
     *     a cue lasts (s); 0 for all at once
     * @param pressesStarter whether the starter is pressed after the moves
     */
    public record Execution(
            Optional<String> automatic, double eachSeconds, boolean pressesStarter) {
        public static final Execution BY_PILOT_AT_ONCE = new Execution(Optional.empty(), 0);

        /** One that leaves the starter alone. */
        public Execution(Optional<String> automatic, double eachSeconds) {
            this(automatic, eachSeconds, false);
        }

        public Execution {
            if (!(eachSeconds >= 0)) {
                throw new IllegalArgumentException(
                        "procedure: " + eachSeconds + " s from one load to the next is below 0");
            }
        }
    }

    /** Everything at once, by the pilot. */
    public Procedure(
            String name,
            List<String> when,
            double responseSeconds,
            Map<String, String> moves,
            List<String> sheds) {
        this(name, when, responseSeconds, moves, sheds, Execution.BY_PILOT_AT_ONCE);
    }

    public Procedure {
        when = List.copyOf(when);
        sheds = List.copyOf(sheds);
        moves = Ordered.copyOf(moves);
    }
}

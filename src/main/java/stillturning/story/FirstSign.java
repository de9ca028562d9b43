package stillturning.story;

/**
 * The first that a pilot can notice of a failure.
 *
 * @param seconds when, counted from the failure (s)
 * @param from what gives it away
 * @param words what he notices
 */
public record FirstSign(double seconds, From from, String words) {

    /** What gives a failure away. */
    public enum From {
        /** His own hand: he knows what he does. */
        OWN_ACT,
        /** Something that the candidate lets him see. */
        CUE,
        /** A load of which he notices without a lamp that it has stopped or lost its feed. */
        LOAD,
        /** The engine itself falters or stops. */
        ENGINE
    }
}

package stillturning.assess.verdict;

/**
 * What an outcome alone does not say of a failure, and a pilot has to know.
 *
 * @param words a clause about the engine or the failure, complete with its numbers
 */
public record Remark(Topic topic, String words) {

    /** What it is about, the gravest first. */
    public enum Topic {
        /** It cannot be told to its end, and so counts as engine lost. */
        UNTOLD,
        /** The starter is tried and does not start it. */
        CANNOT_BE_STARTED,
        /** Most of the time that is left has gone before anybody can notice anything. */
        UNSEEN,
        /** What still works once the quick events are over is destroyed later. */
        LOSS_LATER,
        /**
         * What the pilot can move in time so that something is not destroyed, or that he cannot.
         */
        WITHIN_REACH,
        /** By another of the laws by which full batteries may gas, something else comes of it. */
        OVERCHARGE,
        /** With another margin for what steadies an alternator, something else comes of it. */
        STEADYING,
        /** It stops for good, though late enough to have landed. */
        STOPS_LATER,
        /** It faltered, or stopped and came back, before what the outcome tells. */
        FALTERED_BEFORE
    }
}

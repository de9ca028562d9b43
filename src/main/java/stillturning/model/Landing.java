package stillturning.model;

/**
 * How long an engine must run on after a failure for the aircraft to have landed.
 *
 * @param countsFrom from when the time to get down counts
 * @param enoughSeconds time to get down (s)
 * @param planSeconds how long the whole flight plan lasts (s): no flight is longer, so what runs on
 *     for longer has landed, whether or not anybody has noticed anything
 */
public record Landing(CountsFrom countsFrom, double enoughSeconds, double planSeconds) {

    /**
     * Whether an engine stops too early.
     *
     * @param lastsSeconds how long it runs from when the time counts (s)
     * @param fromFailureSeconds how long it runs from the failure (s)
     */
    public boolean isMissed(double lastsSeconds, double fromFailureSeconds) {
        return lastsSeconds < enoughSeconds && fromFailureSeconds < planSeconds;
    }
}

package stillturning.assess.front;

/**
 * How far a search goes.
 *
 * @param steps most steps from where one stands
 * @param trials most things tried
 */
public record SearchLimits(int steps, int trials) {
    public SearchLimits {
        if (steps < 0 || trials < 1) {
            throw new IllegalArgumentException(
                    steps + " steps and " + trials + " trials are no search");
        }
    }
}

package stillturning.assess.ranking;

/**
 * One thing that counts in the choice.
 *
 * @param weight importance of going from the worst to the best end of the scale, relative to the
 *     other criteria; at least 0, need not sum to 1
 */
public record Criterion(String name, Sense sense, double weight, Scale scale) {
    public Criterion {
        if (name.isBlank()) {
            throw new IllegalArgumentException("a criterion has no name");
        }
        if (!(weight >= 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException(
                    "weight " + weight + " of " + name + " is not a finite number of at least 0");
        }
        if (sense.compare(scale.worst(), scale.best()) > 0) {
            throw new IllegalArgumentException(
                    name + ": worst " + scale.worst() + " is better than best " + scale.best());
        }
    }
}

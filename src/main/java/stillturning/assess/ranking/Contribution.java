package stillturning.assess.ranking;

/**
 * What one criterion adds to a candidate's total.
 *
 * @param value the candidate's value as given
 * @param worth place of the value on the scale, from 0 (worst) to 1 (best)
 * @param points weight times worth; the total is the sum of these
 */
public record Contribution(String criterion, double value, double worth, double points) {}

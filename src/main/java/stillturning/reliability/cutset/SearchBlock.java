package stillturning.reliability.cutset;

/**
 * A share of the work: all sets of so many events of which this one is the first.
 *
 * @param order how many events a set has, at least 1
 */
public record SearchBlock(int order, int first) {}

package stillturning.reliability.likelihood;

import stillturning.reliability.chance.ChanceRanges;
import stillturning.reliability.chance.TopChance;

/**
 * A probability with its bounds, and where it lies if the rates are wrong.
 *
 * @param point in the mean of everything that the rates may be: the mean of the ranges
 * @param ranges with every rate anywhere in its spread; a contributor's source is the number of the
 *     first event in a set whose rate comes from there
 */
public record ChanceEstimate(TopChance point, ChanceRanges ranges) {}

package stillturning.assess.ranking;

/**
 * What a criterion was valued on.
 *
 * @param weight share of this criterion in the sum of all weights (1)
 */
public record AppliedScale(String criterion, Sense sense, double weight, Scale scale) {}

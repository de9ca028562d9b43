package stillturning.assess.ranking;

/**
 * One criterion in which two candidates differ.
 *
 * @param value the candidate's value
 * @param referenceValue the value of the candidate it is laid beside
 * @param points the candidate's contribution minus the other's; 0 where both lie beyond the same
 *     end of the scale or the criterion has no weight
 */
public record CriterionDifference(
        String criterion, double value, double referenceValue, double points) {}

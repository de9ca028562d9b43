package stillturning.model.goal;

/** That one criterion matters at least as much as another. */
public record CriterionOrder(CriterionName heavier, CriterionName lighter) {}

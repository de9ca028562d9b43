package stillturning.model.goal;

import stillturning.model.CriterionName;

/** That one criterion matters at least as much as another. */
public record CriterionOrder(CriterionName heavier, CriterionName lighter) {}

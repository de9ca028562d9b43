package stillturning.assess.ranking;

/** That one criterion weighs at least as much as another, which is all that is known of the two. */
public record WeightOrder(String heavier, String lighter) {}

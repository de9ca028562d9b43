package stillturning.model.goal;

/** What candidates are ranked by. */
public enum CriterionName {
    ENGINE_STOPS("single failures that stop the engine"),
    PILOT_NEEDED("single failures that need the pilot"),
    ENDURANCE("endurance without charging"),
    WEIGHT("weight"),
    COMPLEXITY("complexity"),
    COST("cost");

    private final String words;

    CriterionName(String words) {
        this.words = words;
    }

    /** Whether a greater value is the better one. */
    public boolean moreIsBetter() {
        return this == ENDURANCE;
    }

    /** In words. */
    public String words() {
        return words;
    }
}

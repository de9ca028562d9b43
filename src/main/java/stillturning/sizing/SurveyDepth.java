package stillturning.sizing;

/** How far a check of sizes looks. */
public enum SurveyDepth {
    /** Every phase with nothing wrong, and shorts that cannot be interrupted: quick. */
    NOTHING_WRONG,
    /** Also every single failure in every phase, since a surviving feed carries more. */
    SINGLE_FAILURES
}

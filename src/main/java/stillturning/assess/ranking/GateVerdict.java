package stillturning.assess.ranking;

/**
 * Whether a candidate meets one hard requirement, with the caller's reason in words.
 *
 * @param gate name of the requirement, the same for all candidates
 */
public record GateVerdict(String gate, boolean met, String reason) {}

package stillturning.reliability.chance;

/**
 * One event's rate, divided into what happens to it alone and what takes its equals along.
 *
 * @param own the rest, to stand in its place
 * @param common one event for all that share it
 */
public record BetaSplit(Occurrence own, Occurrence common) {}

package stillturning.reliability.likelihood;

import stillturning.reliability.chance.Importance;

/**
 * How much the chance hangs on one thing.
 *
 * @param name of the part or of the event
 */
public record Share(String name, Importance importance) {}

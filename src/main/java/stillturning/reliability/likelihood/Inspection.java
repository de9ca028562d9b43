package stillturning.reliability.likelihood;

import java.util.OptionalDouble;

/**
 * How often to look for a latent failure that no check reveals.
 *
 * @param everySeconds flown between two looks (s), the study's usual interval at most; empty where
 *     no rate tells
 * @param words the same for people, without the end of a sentence
 */
public record Inspection(int event, OptionalDouble everySeconds, String words) {}

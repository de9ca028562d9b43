package stillturning.structure;

/**
 * What the graph of a candidate says.
 *
 * @param independentLoops loops that no other loops make up
 */
public record StructureFindings(int independentLoops) {}

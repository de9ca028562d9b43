/**
 * A candidate as a graph: the second opinion. In: a candidate and the engine's logic. Out:
 * structural findings. Knows no network solution and no time line.
 */
@NullMarked
package stillturning.structure;

import org.jspecify.annotations.NullMarked;

/**
 * Values that a file did not settle: what was assumed, how far each may lie off, and trials with
 * another value. In: values as they are read. Out: assumptions and ranges with their places. Knows
 * no candidate and no solver.
 */
@NullMarked
package stillturning.files.value;

import org.jspecify.annotations.NullMarked;

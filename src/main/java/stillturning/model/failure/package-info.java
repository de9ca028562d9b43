/**
 * What can go wrong in a candidate, one by one and together. In: a candidate, and what its parts
 * share. Out: named failures and common causes, each a set of hits on parts and of levers moved.
 * Knows no solver, no time line, no file.
 */
@NullMarked
package stillturning.model.failure;

import org.jspecify.annotations.NullMarked;

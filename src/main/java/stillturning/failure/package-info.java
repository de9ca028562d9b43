/**
 * What can go wrong in a candidate. In: a candidate. Out: named failures, each a set of hits on
 * parts and of levers moved. Knows no solver, no time line, no file.
 */
@NullMarked
package stillturning.failure;

import org.jspecify.annotations.NullMarked;

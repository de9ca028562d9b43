/**
 * What a story means for the flight: an outcome for each failure, and whether the requirements bear
 * it. In: stories and requirements. Out: a verdict with the margin and the fact that decided it.
 * Knows no order of candidates, no file, no screen.
 */
@NullMarked
package stillturning.assess.verdict;

import org.jspecify.annotations.NullMarked;

/**
 * How likely it is that at least one of many sets of events comes true. In: cut sets as plain event
 * numbers, and how often each event occurs. Out: probabilities with their bounds, importances,
 * ranges. Knows no part, no engine, no file, no prose.
 */
@NullMarked
package stillturning.reliability.chance;

import org.jspecify.annotations.NullMarked;

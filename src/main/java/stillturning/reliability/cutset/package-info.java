/**
 * Smallest sets of events that together bring something about. In: a number of events and somebody
 * who answers for any set of them. Out: the minimal sets, and the sets that one more event undoes.
 * Knows nothing of aircraft: events are numbers.
 */
@NullMarked
package stillturning.reliability.cutset;

import org.jspecify.annotations.NullMarked;

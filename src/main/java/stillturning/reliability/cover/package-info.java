/**
 * The cheapest choice of sets that covers every item. In: plain numbers of items, and sets with a
 * cost. Out: a choice, and whether it is proven to be the cheapest. Knows no check, no failure, no
 * file, no prose.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A search may give up, but never by the clock.</b> This package decides the plain part
 *       itself, leaves the rest to Sat4j with a budget of conflicts, and says what is proven. Among
 *       equally cheap choices it settles set after set by number, so that the answer does not
 *       depend on the path of the solver. Turned down: a time limit, with which machines would
 *       differ. Held by {@code CoverTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.cover;

import org.jspecify.annotations.NullMarked;

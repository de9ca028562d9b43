/**
 * The cheapest choice of sets that covers every item. In: plain numbers of items, and sets with a
 * cost. Out: a choice, and whether it is proven to be the cheapest. Knows no check, no failure, no
 * file, no prose.
 */
@NullMarked
package stillturning.reliability.cover;

import org.jspecify.annotations.NullMarked;

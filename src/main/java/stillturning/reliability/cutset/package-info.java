/**
 * Smallest sets of events that together bring something about. In: a number of events, and a {@code
 * Trial} that answers for any set of them. Out: the minimal sets, and the sets that one more event
 * undoes. Knows nothing of aircraft: events are numbers.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Sets are left out only where they cannot be minimal.</b> {@code CutSearch} leaves out a
 *       set of which a part already ends the engine, whatever the whole set does, and nothing else.
 *       It does not suppose that more failures are worse, since an opening that clears a short is
 *       real. A minimal set that one more event makes harmless is listed. Held by {@code
 *       CutSearchTest}.
 *   <li><b>What nobody can say counts as brought about.</b> A set without an answer is feared like
 *       a minimal set, unless a part of it is: it counts in the chance and for what a check should
 *       reveal, and is named as doubtful. Only sets with an answer make others not minimal, so none
 *       that is known is hidden behind a doubt. Turned down: leaving it out, which makes the
 *       candidate that is hardest to compute the likeliest to fly on. Held by {@code
 *       DoubtedSetsTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.cutset;

import org.jspecify.annotations.NullMarked;

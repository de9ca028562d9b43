/**
 * Looks for small changes of a candidate that mend what is wrong with it. In: a candidate as it is
 * drawn, and what is to be mended. Out: {@link stillturning.dossier.suggest.Suggested}, each with
 * its drawing. Writes nothing to disk.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Moves near the trouble are taken first.</b> Near is what a failing part is joined to,
 *       and what that is joined to: there a change reaches it. The others follow as long as trials
 *       are left, and how many were left is told.
 *   <li><b>Every single move is tried before two.</b> The smallest mend is what a builder does
 *       first; a search that went on from what it had found left half of the single moves untried.
 *       Held by {@code SuggestTest}.
 *   <li><b>A pair of which a part is gone is not mended by that.</b> A renamed wire breaks as well
 *       as the old one did; only where both failures can still be made to happen, and do not end
 *       the engine or show before, is the pair mended. Held by {@code SuggestTest}.
 *   <li><b>What is to be mended is asked first.</b> Only where fewer of the wanted failures do harm
 *       than before, everything else about the drawing is found out. A drawing in which as many do
 *       harm may still be gone on from. Held by {@code SuggestTest}.
 *   <li><b>One search answers for all that is wrong with a candidate.</b> Where the lightest change
 *       for each single thing is asked for, whatever mends a thing that another does not is outdone
 *       by no other; so a drawing is told once and not once for each thing. A requirement is asked
 *       first of the failures that broke it, and of all only where these no longer do. Held by
 *       {@code LightestChangesTest} against every move tried alone.
 *   <li><b>What is kept of a search is drawings, not claims.</b> Told again, each is read and
 *       assessed in full, and chosen anew. Held by {@code LightestChangesTest}.
 * </ul>
 */
@NullMarked
package stillturning.dossier.suggest;

import org.jspecify.annotations.NullMarked;

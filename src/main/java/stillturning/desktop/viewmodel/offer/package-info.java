/**
 * Drawings that the program offers beside the user's own: what would mend a trouble of the open
 * candidate, and what a search for simpler layouts found. In: the open study, and what is to be
 * mended. Out: {@link stillturning.desktop.viewmodel.offer.OfferedDrawings}: each in words, and
 * drawn with its differences marked. Knows no scene; the search itself is in {@code
 * dossier.suggest}.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What is offered changes nothing.</b> It is kept only by being written as a candidate of
 *       its own, under a name that is free, and that is one edit like any other: undone as a whole.
 *       Held by {@code OfferedDrawingsTest}.
 *   <li><b>It is drawn on a sheet of its own.</b> On the board every symbol can be worked on; an
 *       offer can only be looked at, as it is now and as it would be.
 * </ul>
 */
@NullMarked
package stillturning.desktop.viewmodel.offer;

import org.jspecify.annotations.NullMarked;

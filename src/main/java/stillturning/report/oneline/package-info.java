/**
 * A candidate as a one-line diagram, and how it looks at any instant after a failure. In: a
 * candidate, and a snapshot of a story. Out: symbols and lines without a place, and their states.
 * Knows no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Backup means where current comes from.</b> A net is on backup if at least half of the
 *       current that arrives there comes from a source that gave none with nothing wrong, or by a
 *       way that then carried under a tenth of it. Nets that no current reaches look as the net to
 *       which they are joined. Dark is below 3 V (a guess). Over-voltage is above the lowest limit
 *       that the study names among nets that metal can join (what a load withstands, a warning, a
 *       guard), and otherwise 15 % above normal. Turned down: comparing which sources are
 *       connected, which calls a floating battery a supply. Held by {@code DrawingStatesTest}.
 * </ul>
 */
@NullMarked
package stillturning.report.oneline;

import org.jspecify.annotations.NullMarked;

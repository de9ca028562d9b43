/**
 * What searches over drawings share: a step from one drawing to the next, and what a drawing has to
 * do whatever it is searched for. In: candidates as they are drawn. Out: {@link
 * stillturning.dossier.redrawn.DrawnStep} and {@link stillturning.dossier.redrawn.Service}.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>No protector is taken out of a line that stays.</b> Stories tell what a short does to
 *       the engine, not what it does to the wire; judged by stories alone the simplest layout has
 *       no fuse, and a fuse that opens for no reason is mended by having none.
 *   <li><b>With nothing wrong every load works, and no battery runs down.</b> A load that is wired
 *       no longer cannot fail, and a battery that nothing charges is full at the beginning of every
 *       story: neither is seen by breaking parts. Held by {@code ServiceTest}.
 *   <li><b>The drill that takes all power off still takes it off.</b> It is for smoke: a layout
 *       without the switch for it has a part less and no failure more, and what burns then burns
 *       on. The engine's loads may stay on, or come to. Held by {@code ServiceTest}.
 *   <li><b>With every switch off nothing new is on.</b> A switch that is taken out cannot fail, and
 *       a load straight on a battery never loses its feed; what it empties in the hangar, no story
 *       of a flight tells. Asked of suggestions. Held by {@code ServiceTest}.
 * </ul>
 */
@NullMarked
package stillturning.dossier.redrawn;

import org.jspecify.annotations.NullMarked;

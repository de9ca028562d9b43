/**
 * What makes the difference between two candidates: groups of what they do not have alike are
 * exchanged, every mix is assessed, and each group gets its share. In: two candidates of an
 * assessed study. Out: an {@link stillturning.assess.exchange.Attribution}. Knows no file, no
 * screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A group's share is its Shapley value</b>: what exchanging it adds, averaged over all
 *       orders in which the groups may be exchanged. It is the only rule whose shares sum to the
 *       whole difference, give nothing to what changes nothing, and treat alike what acts alike (L.
 *       S. Shapley, A value for n-person games, 1953; from memory, its worked values computed).
 *       Turned down: exchanging one group at a time, whose effects do not sum to anything. Held by
 *       {@code ShapleyTest} and {@code ExchangeTest}.
 *   <li><b>Two candidates differ in regions.</b> A region is a set of parts that only one of them
 *       has, with the terminals of common parts at which they are joined. Where both have a stud (a
 *       bus bar, a ground, a battery's pole) with the same things joined, what hangs on it can be
 *       taken off and another thing hung there; so regions end at studs. A region goes as a whole.
 *   <li><b>What cannot be taken apart is said to go together.</b> A mix in which a terminal hangs
 *       in the air, or which cannot be assessed, would tell of nothing that anybody could build;
 *       the groups of the layout are then exchanged as one.
 *   <li><b>Mixes are held only against what this room can look at.</b> Nobody looks at the sizes
 *       and the pairs of failures of a mix, and it is no departure from a baseline; counted as
 *       missed, such requirements would make every mix worse than the two that it is made of. They
 *       are left aside on both sides, and the answer says so. Held by {@code ExchangeTest}.
 *   <li><b>A battery's values go apart from its place.</b> Batteries are matched by name, then by
 *       capacity; one without a counterpart is a matter of layout.
 * </ul>
 */
@NullMarked
package stillturning.assess.exchange;

import org.jspecify.annotations.NullMarked;

/**
 * What can go wrong in a candidate, one by one and together. In: a candidate, and what its parts
 * share. Out: named failures and common causes, each a set of hits on parts and of levers moved.
 * Knows no solver, no time line, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A common cause is one failure with several hits.</b> {@code Damage} says which failure
 *       mode an event causes in which kind of part. A zone reaches the parts in it, and the wires
 *       whose shortest way passes it. The engine's own loads in the zone, with their own leads, are
 *       left out where the engine stops without them however it is wired; otherwise every candidate
 *       would be charged with the same. Where an event can end in two ways, each is a cause with
 *       half of its rate (a guess). Held by {@code CommonCausesTest}, {@code DamageTest} and {@code
 *       SandpiperCommonCausesTest}.
 * </ul>
 */
@NullMarked
package stillturning.model.failure;

import org.jspecify.annotations.NullMarked;

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
 *   <li><b>A dead lamp is a failure of its cue, not of a part.</b> What shows a voltage or an
 *       alternator is a small lamp of its own, whose supply nobody draws; it hides what it watches
 *       and changes no current. It is latent, since it is dark in normal flight whether it works or
 *       not, so it stands among what comes in pairs and not among the single failures. What a load
 *       shows dies with the load, what falls silent needs no lamp, and what acts by itself has the
 *       sensor. Held by {@code DeadLampTest} and {@code RunUpTest}.
 * </ul>
 */
@NullMarked
package stillturning.model.failure;

import org.jspecify.annotations.NullMarked;

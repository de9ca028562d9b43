/**
 * The things on the bench: one file a kind, each with its terminals, electrical elements, failure
 * modes, weight and price. In: plain SI numbers. Out: immutable parts. Knows no candidate, no
 * solver, no time, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A kind is one file, found by its mark.</b> What it is called, what is known of it, how
 *       it fails, what damages it, how it is inspected, billed and drawn stands there; rooms ask
 *       {@code Part}. Turned down: a sealed family with a table in each room, in which a forgotten
 *       row falls through in silence; and reading every class in the folder, which needs a library
 *       at run time. Held by {@code ArchitectureTest}, {@code FailureModesTest}, {@code
 *       CatalogueTest}.
 *   <li><b>A failure mode is known by its key, shown by its name.</b> Rates and rules use the key,
 *       which all alike things of a part share ({@code pin-open}). Turned down: rules that look for
 *       the end of an English name. Held by {@code ChancesTest} and {@code DamageTest}.
 *   <li><b>Wires and loads are known to every room</b>: a run makes the ones and the study names
 *       the others, so both are words of the study's own language.
 * </ul>
 */
@NullMarked
package stillturning.parts;

import org.jspecify.annotations.NullMarked;

/**
 * The things on the bench: one file a kind, each with its terminals, electrical elements, failure
 * modes, weight and price. In: plain SI numbers. Out: immutable parts. Knows no candidate, no
 * solver, no time, no file.
 */
@NullMarked
package stillturning.parts;

import org.jspecify.annotations.NullMarked;

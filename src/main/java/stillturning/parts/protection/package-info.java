/**
 * What opens on too much current or voltage: fuses, breakers, guards. One file a kind; no other
 * room names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no
 * file.
 */
@NullMarked
package stillturning.parts.protection;

import org.jspecify.annotations.NullMarked;

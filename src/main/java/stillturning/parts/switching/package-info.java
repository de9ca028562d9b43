/**
 * What closes and opens circuits: by hand, by a coil, by a logic. One file a kind; no other room
 * names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no file.
 */
@NullMarked
package stillturning.parts.switching;

import org.jspecify.annotations.NullMarked;

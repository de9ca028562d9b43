/**
 * What lines meet in or lead through: bars, connectors, grounds, diodes. One file a kind; no other
 * room names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no
 * file.
 */
@NullMarked
package stillturning.parts.joining;

import org.jspecify.annotations.NullMarked;

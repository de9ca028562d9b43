/**
 * What makes current or keeps it: batteries, alternators, converters. One file a kind; no other
 * room names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no
 * file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A battery may be shorted inside by more than a cell.</b> One bridged cell leaves a
 *       battery that an alternator still holds up; half of them pull the bus down, and every
 *       battery joined to it pours into the short until it is empty (report CEN12LA389, NTSB). Half
 *       is a guess between one and all. Held by {@code FailureModesTest} and {@code ReplayTest}.
 *   <li><b>A regulator may see too little.</b> With some resistance in its ground or sense lead it
 *       holds the bus a tenth too high: below what a guard trips at, above what batteries and some
 *       computers bear (report WPR18LA021, NTSB). Held by the same.
 * </ul>
 */
@NullMarked
package stillturning.parts.source;

import org.jspecify.annotations.NullMarked;

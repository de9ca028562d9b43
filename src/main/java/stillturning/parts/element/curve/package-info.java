/**
 * Curves and limits that an element is described by: against temperature, speed, current and time.
 * In: plain SI numbers of a data sheet. Out: the value at a point, checked for what cannot be.
 * Knows no element, no part kind, no network.
 */
@NullMarked
package stillturning.parts.element.curve;

import org.jspecify.annotations.NullMarked;

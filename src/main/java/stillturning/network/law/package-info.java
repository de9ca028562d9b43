/**
 * What a branch lets through at which voltage, one law a record. In: SI numbers. Out: current,
 * conductance and limits for a solver to iterate on. Knows no net, no solver, no part, no time.
 */
@NullMarked
package stillturning.network.law;

import org.jspecify.annotations.NullMarked;

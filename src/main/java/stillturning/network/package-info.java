/**
 * Steady DC currents and voltages. In: nets and branches. Out: an operating point or a named
 * refusal. Knows no part, no failure, no time, no file, no screen.
 */
@NullMarked
package stillturning.network;

import org.jspecify.annotations.NullMarked;

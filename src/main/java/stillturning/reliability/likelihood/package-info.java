/**
 * How likely it is that the engine ends, and what that hangs on. In: what events do together in a
 * candidate, what a run-up reveals, how often things fail. Out: chances with their ranges, shares
 * of parts and causes. Knows no file and no screen, and asks of the circuit only whether the engine
 * runs on the ground at all.
 */
@NullMarked
package stillturning.reliability.likelihood;

import org.jspecify.annotations.NullMarked;

/**
 * How likely it is that the engine ends, and what that depends on. In: what events do together in a
 * candidate, what a run-up reveals, how often things fail. Out: chances with their ranges, shares
 * of parts and causes. Knows no file and no screen, and asks of the circuit only whether the engine
 * runs on the ground at all.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>One value in a table is one source.</b> Rates of one kind of part with the same figures
 *       in the same words are drawn together, so that twenty wires are not better known than one. A
 *       part's own figure is drawn by itself. What units of one make give to their common cause
 *       comes from their source too. Turned down: every failure mode by itself, which makes the
 *       range of a sum far too narrow. Held by {@code LikelihoodTest}.
 *   <li><b>Nobody takes off with an engine that does not run.</b> A set of nothing but left
 *       switches counts only if the engine runs with them on the ground. Otherwise a master switch
 *       left off, once in a thousand flights, would be nine tenths of everything. Held by {@code
 *       NeverFlownTest}.
 * </ul>
 */
@NullMarked
package stillturning.reliability.likelihood;

import org.jspecify.annotations.NullMarked;

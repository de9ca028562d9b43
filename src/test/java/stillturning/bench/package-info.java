/**
 * Small aircraft wired up by hand for tests.
 *
 * <p>How many changes of a room's code its own tests notice (profile {@code mutation}, its default
 * changes), each with what was measured:
 *
 * <ul>
 *   <li>{@code reliability.cutset}, 2026-12-01, all 112 changes: 107, 96 %. What the other five
 *       change nobody can see: two lead past the last event, where no bit is set; one asks whether
 *       a set holds itself, before it is known; one turns round the order of work; one goes through
 *       all proper parts of a set by what is left out.
 *   <li>{@code sizing}, 2026-12-01, a sample of up to 12 changes of each class, 202 in all: 96, 48
 *       %, <b>not enough</b>; of what nothing ran, tests in other rooms run a part. {@code
 *       ListedSizesTest} was written after that and is not in the figure.
 * </ul>
 */
@NullMarked
package stillturning.bench;

import org.jspecify.annotations.NullMarked;

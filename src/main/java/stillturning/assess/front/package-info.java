/**
 * A search for all that nothing else outdoes, step by step from where one stands. In: a {@link
 * stillturning.assess.front.Space}. Out: what was {@link stillturning.assess.front.Found}. Knows no
 * candidate, no requirement, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Everything within the given number of steps is tried, the promising first.</b> A genetic
 *       search was measured on a toy of 69,120 candidates: it looked at a third and missed a tenth
 *       of the front without saying which. Here the order only decides what is known when time runs
 *       out; left alone, the search ends with the whole front and says that it is whole. Held by
 *       {@code WholeFrontTest} against enumeration.
 *   <li><b>What came out twice is looked at once,</b> told by its form; reached again by fewer
 *       steps, it may go on farther, and so may all that was made from it.
 *   <li><b>What cannot be on the front is not looked at.</b> A space says what a thing is worth at
 *       best; where something on the front is as good as that in everything, nothing that is found
 *       out later brings the thing there. It is still gone on from. Held by {@code WholeFrontTest}
 *       with that knowledge and without.
 *   <li><b>The same for any number of threads.</b> Steps are picked in rounds of a fixed size, made
 *       and tried at once, and put down in their order. No chance is in it, so there is nothing to
 *       seed. What ends with time, or is called off, ends between two rounds.
 *   <li><b>An interrupted search is played again.</b> What was tried is kept under the way to it,
 *       so going on costs the steps but not the trials, and ends where it would have ended.
 * </ul>
 */
@NullMarked
package stillturning.assess.front;

import org.jspecify.annotations.NullMarked;

/**
 * Studies and candidates as files. In: a study's folder. Out: a study and where its values come
 * from, or every problem at once. Knows no solver, no time line, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A value without a range has the range of its origin</b> ({@code DefaultSpread}):
 *       measured ±2 % (voltages 0.5 %, temperatures 2 K), data sheet ±5 % (1 %, 3 K), catalogue ±10
 *       % (2 %, 5 K), guess ±20 % (5 %, 10 K). These are guesses of this project. A value written
 *       without an origin is a choice and has no range, and neither has what the program computes
 *       from other values. No test holds these figures.
 *   <li><b>A drawing in progress is read twice.</b> First strictly, for computing. Only where that
 *       fails, it is read leniently: what cannot be read is left out or replaced by the values of
 *       its class. The result is a {@code HalfDrawn}, which no room that computes takes. One broken
 *       candidate does not keep the others from being computed. Turned down: keeping the last good
 *       drawing, which hides what was just typed. Held by {@code LenientReadingTest} and {@code
 *       AtWorkTest}.
 *   <li><b>A mistake that only a later room can find is still a mistake of the file.</b> {@code
 *       StudyReader.mistake} takes it with its path and gives it the place in the text. Held by
 *       {@code ProblemTest} and {@code BreakCommandTest}.
 * </ul>
 */
@NullMarked
package stillturning.files;

import org.jspecify.annotations.NullMarked;

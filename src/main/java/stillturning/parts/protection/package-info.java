/**
 * What opens on too much current or voltage: fuses, breakers, guards. One file a kind; no other
 * room names one. In: plain SI numbers. Out: parts. Knows no candidate, no solver, no time, no
 * file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A breaker has a class, and none is silently the fast one.</b> Of the fast class a whole
 *       band could be read, of the ordinary class one time only: 30 s at 200 %, 12 to 80 times as
 *       long. Its band is a guess through that point by the law of a bimetal, and says so. A part
 *       that names no class is of the study's usual one ({@code classes: {breaker: fast}}); where
 *       the study states none it is ordinary, and that is listed among the guesses. Races, wire
 *       heating and pairs take the band of the class. Turned down: one band over both classes,
 *       whose middle is no breaker that anybody sells. Held by {@code TimeCurrentCurveTest}, {@code
 *       WireStoryTest}, {@code ToleranceTest}, {@code SizingTest} and {@code StudyReaderTest}.
 * </ul>
 */
@NullMarked
package stillturning.parts.protection;

import org.jspecify.annotations.NullMarked;

/**
 * What a story means for the flight: an outcome for each failure, and whether the requirements bear
 * it. In: stories and requirements. Out: a verdict with the margin and the fact that decided it.
 * Knows no order of candidates, no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>An outcome says what the engine does to the end of its story.</b> Only what runs on at
 *       the end has recovered. What an outcome leaves out, such as a stop after the landing or a
 *       dip before it, is a {@code Remark} beside it. Held by {@code OutcomeOfStoryTest} against
 *       the engine's own bar in aircraft drawn by lot.
 *   <li><b>Time counts from the first sign that the pilot can have</b>: a cue, a load of which he
 *       notices that it stops, or the engine itself. Nobody turns back because of a battery that
 *       empties unseen. A study may count from the failure; the page then says so. No flight is
 *       longer than the flight plan: an engine that outlasts all of it has landed, and when it
 *       would stop is a remark. Held by {@code JudgeTest} and {@code OutcomeOfStoryTest}.
 *   <li><b>What cannot be told to its end counts as engine lost</b>, however far it is told, with
 *       the reason beside it as a remark. Never does one such story cost a candidate its place.
 *       Held by {@code BrokenOffTest}.
 *   <li><b>Where an outcome hangs on what nobody knows without measuring, the other outcome stands
 *       beside it</b>: how a full battery gasses (three laws that span what was published), and how
 *       much resistance a battery may be behind and still steady an alternator (half and twice the
 *       guess). Only where the answer is near the margin is it asked again. Held by {@code
 *       OverchargeRemarksTest} and {@code WithinReachTest}.
 *   <li><b>What a pilot can do against over-voltage is searched by playing it.</b> Every lever in
 *       reach of his seat, every drill and procedure, and pairs of switches where those do not keep
 *       all, begun once a hand can have moved after the first sign; then the last moment at which
 *       the best still keeps what it keeps. What ends the engine at once, or destroys anything
 *       sooner, is no remedy. Of two that do as well, the one that leaves no bus at a high voltage.
 *       Turned down: naming the field's switch by rule, which is wrong where magnets make the
 *       field. Held by {@code WithinReachTest}.
 * </ul>
 */
@NullMarked
package stillturning.assess.verdict;

import org.jspecify.annotations.NullMarked;

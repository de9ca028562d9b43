/**
 * The order of the work: every failure of every candidate told, judged, weighed and ranked. In: a
 * study. Out: an assessment that reports and screens only have to print. Knows no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Engine lost means lost before the aircraft can land.</b> Every charging failure ends the
 *       engine at some time. A failure counts as ending it only when that comes sooner than the
 *       study's {@code time-to-land}. A story in which the pilot acts is told again with a late
 *       pilot and with none, which shows whether he was needed. Held by {@code JudgeTest}.
 *   <li><b>What leaves no time is named first.</b> Of the failures that miss a requirement those
 *       are named first that stop the engine soonest, to the minute, and those alike in the order
 *       of the parts: a plug that parts leaves the pilot nothing to do, a lost field an hour in
 *       which a lamp would have told him. Held by {@code ReplayTest} with reports 105519 and
 *       LAX05CA310 (NTSB).
 *   <li><b>No candidate is charged with failures of what the engine cannot do without.</b> If the
 *       only ignition coil breaks, no wiring saves the engine. Such failures are told and listed,
 *       but neither the requirement nor the ranking counts them. Held by {@code JudgeTest}.
 *   <li><b>Each guess is tried, not differentiated.</b> Outcomes change in steps, so each guess is
 *       set a fifth lower and a fifth higher and the study is assessed again. The changed study is
 *       made by the caller, who knows the files ({@code GuessVariation}); the appraisal of every
 *       candidate that the change leaves equal is kept. Turned down: slopes, which say nothing
 *       about a breaker that opens or a requirement that is just met. Held by {@code GuessesTest}.
 *   <li><b>The second opinion is asked about every part.</b> {@code Assess.secondOpinion} removes
 *       each part from the shape and, element by element, from the story (a bus with everything at
 *       its bar), and compares whether the engine runs once everything planned has been done. Where
 *       the two differ, each thing that only stories know ({@code StoryOnlyFact}) is taken away and
 *       both are asked again, up to four things at once. So an explanation is tried, not read off
 *       the events, and a disagreement without one is a mistake in one of the two. Held by {@code
 *       CrossCheckTest}, with candidates drawn at random.
 *   <li><b>A flight in which nothing fails is flown from its beginning, too,</b> with protectors as
 *       they usually are and as quick as their class allows ({@code NearLimit}). A breaker holds
 *       somewhere between 115 and 138 % of its rating and takes minutes over it, so one that holds
 *       on the ground may open in the climb; engines have been lost so with nothing broken. Held by
 *       {@code NearLimitTest}.
 *   <li><b>Tolerances of protectors are played</b> as {@code story.device} decides ({@code
 *       Tolerances}). Held by {@code ToleranceTest}.
 *   <li><b>What only reading asks for is told when it is read.</b> Ranks and requirements hang on a
 *       pilot as planned and on none; late pilots, a standing propeller, what lies within reach,
 *       other laws and other orders of moves cost as much again, and are worked out when somebody
 *       asks ({@code Lazy}), on all processors where a page asks for all. Turned down: leaving them
 *       out of an assessment, of which there would then be two kinds. Held by {@code LazyTest} and
 *       {@code JudgeTest}.
 * </ul>
 */
@NullMarked
package stillturning.assess;

import org.jspecify.annotations.NullMarked;

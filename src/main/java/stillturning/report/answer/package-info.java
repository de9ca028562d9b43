/**
 * The answer to "which one?", short enough for one screen: who is first, whether that is firm, what
 * the first one still breaks, what the next one buys. In: an assessment, and what was asked beside
 * it. Out: a {@link stillturning.report.answer.FirstAnswer}, which terminal, page and screen set in
 * their own ways.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The first sentence says who is first with equal batteries</b>: once all have the first
 *       one's, and once both have those of a rival that then comes first. Anybody who notices that
 *       batteries alone decide a headline can reverse it. Held by {@code
 *       EqualBatteriesHeadlineTest} and {@code SandpiperFirstScreenTest}.
 *   <li><b>What was not asked stands there with the question that asks it.</b> Trying guesses,
 *       failures in sizes and run-up checks takes longer than somebody waits for a first answer; an
 *       answer that is silent about them would be taken for one that found nothing. Held by {@code
 *       FirstScreenTest}.
 *   <li><b>What the first one breaks is numbered, worst first</b>, whatever room found it: who
 *       decides reads the first screen and no other. Held by {@code FirstScreenTest}.
 *   <li><b>In what the first and the next differ beside layout stands before what follows from
 *       it</b>: batteries, gauges, and values that are a guess in one and known in the other. Held
 *       by {@code MarkedValuesTest}.
 *   <li><b>Who is left out is named with the reason</b>, and the head says for how many the answer
 *       holds. Held by {@code FirstScreenTest}.
 * </ul>
 */
@NullMarked
package stillturning.report.answer;

import org.jspecify.annotations.NullMarked;

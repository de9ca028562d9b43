/**
 * What would mend a candidate: what is asked for, and what was found. In: appraisals of a candidate
 * before and after small changes. Out: {@link stillturning.assess.suggest.Suggestions}. Knows no
 * file and not how a change is drawn.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What a change breaks stands beside what it mends.</b> Every suggestion is a whole
 *       appraisal, and each failure that is new or worse in it, and each requirement that it misses
 *       now, is counted as a new trouble. Held by {@code SuggestTest}.
 *   <li><b>Less of a trouble counts as mended in part.</b> A bus on which twelve failures lose the
 *       engine is seldom mended by one wire; what leaves five of them is shown, with the five.
 *   <li><b>Nothing is weighed.</b> What is shown is all that nothing else found outdoes in what is
 *       left, new troubles, parts touched, weight, parts, price, complexity and acts of the pilot
 *       at once. Of what leaves and breaks as much, the smallest change comes first, since that is
 *       what a builder does first.
 *   <li><b>What loses the engine in more ways than before is not offered as one among others.</b>
 *       Counted are single failures that lose the engine, by name: those that did not do so before
 *       or were not there, against those that no longer do or are gone. A single point that only
 *       moves to a new part counts on both sides. Not counted are what only the pilot saves,
 *       requirements and pairs: these stand among the new troubles. To count only what was asked
 *       for was turned down, since a change that takes away five other ways would be hidden; so was
 *       to weigh by rates, which are the least certain numbers of all. Such changes are counted,
 *       and listed where that is asked for; none of them outdoes one that is offered. Held by
 *       {@code OutweighedTest}.
 *   <li><b>The lightest mend of one thing is the one that breaks least.</b> By weight alone the
 *       first place goes to a battery of another chemistry, which loses weight and adds failures
 *       that lose the engine. What is lighter and breaks more is shown after it. Held by {@code
 *       LightestChangesTest}.
 * </ul>
 */
@NullMarked
package stillturning.assess.suggest;

import org.jspecify.annotations.NullMarked;

/**
 * Order among candidates, and the reasons for it. In: plain numbers by candidate and criterion, and
 * verdicts on hard gates. Out: a {@link stillturning.assess.ranking.RankingResult}. Knows no volt,
 * no part, no file, no prose.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Weights reach no story, so a slider only ranks again.</b> Rank shares do not depend on
 *       the weights and are kept; only totals, order and what unseats the leader are computed
 *       again. Turned down: assessing again, or drawing the random weightings again, at each step
 *       of a slider. Held by {@code ReweightedTest} and {@code DecidingTest}.
 * </ul>
 */
@NullMarked
package stillturning.assess.ranking;

import org.jspecify.annotations.NullMarked;

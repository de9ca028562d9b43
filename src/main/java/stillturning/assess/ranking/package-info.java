/**
 * Order among candidates, and the reasons for it. In: plain numbers by candidate and criterion, and
 * verdicts on hard gates. Out: a {@link stillturning.assess.ranking.RankingResult}. Knows no volt,
 * no part, no file, no prose.
 */
@NullMarked
package stillturning.assess.ranking;

import org.jspecify.annotations.NullMarked;

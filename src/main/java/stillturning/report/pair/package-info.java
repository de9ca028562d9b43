/**
 * Two candidates side by side: what they have unlike, what each failure comes to, what an
 * electronic controller does for which load, which group of differences makes how much, and what
 * would have to be true for the other answer. In: both assessed, and every mix of them. Out:
 * blocks, which terminal, page and paper set alike.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What a controller is for is read off the candidate</b>: which loads hang on its
 *       channels, which of its levers a procedure moves, which procedure it carries out by itself,
 *       which sign it watches or shows. A function that nothing uses is said to be unused; what a
 *       brochure promises and no candidate draws buys nothing. Held by {@code ControllerUseTest}.
 *   <li><b>A share is said with what it turns.</b> A group that makes much of the difference but
 *       leaves the order decides nothing. Held by {@code ExchangeTest}.
 * </ul>
 */
@NullMarked
package stillturning.report.pair;

import org.jspecify.annotations.NullMarked;

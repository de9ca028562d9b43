/**
 * What was found about failures together and hidden, as running text: pairs and chances, common
 * causes and shape, latent failures, the run-up card. In: what the rooms below found. Out: blocks
 * of words that page and terminal set alike.
 */
@NullMarked
package stillturning.report.joint;

import org.jspecify.annotations.NullMarked;

/** Command size: limits, weights, lists, and the patch that mends sizes. */
@NullMarked
package stillturning.cli.size;

import org.jspecify.annotations.NullMarked;

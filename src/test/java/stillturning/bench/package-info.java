/** Small aircraft wired up by hand for tests. */
@NullMarked
package stillturning.bench;

import org.jspecify.annotations.NullMarked;

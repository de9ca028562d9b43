/** What holds of every text from outside, whatever stands in it; the doors are beside theirs. */
@NullMarked
package stillturning.fuzz;

import org.jspecify.annotations.NullMarked;

/**
 * How sure an answer is: one failure told again and again with every uncertain value somewhere in
 * its range. In: the values and what can make the study with them. Out: an endurance from low to
 * high, the outcomes, and which values it hangs on. Knows no file, no screen, no unit.
 */
@NullMarked
package stillturning.assess.ranges;

import org.jspecify.annotations.NullMarked;

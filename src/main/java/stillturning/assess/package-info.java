/**
 * The order of the work: every failure of every candidate told, judged, weighed and ranked. In: a
 * study. Out: an assessment that reports and screens only have to print. Knows no file, no screen.
 */
@NullMarked
package stillturning.assess;

import org.jspecify.annotations.NullMarked;

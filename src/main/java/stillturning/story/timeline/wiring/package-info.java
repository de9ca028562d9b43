/**
 * What failures leave of a candidate's circuit, laid out for the runs that tell of it. In: a
 * candidate and failures. Out: circuits with their branches. Knows no time, no device.
 */
@NullMarked
package stillturning.story.timeline.wiring;

import org.jspecify.annotations.NullMarked;

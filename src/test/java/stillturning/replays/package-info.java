/**
 * Published accident reports, replayed. In: a folder of test resources for each report, with the
 * layout as the report tells it and what it says of the course. Out: whether the course lies within
 * what the unknown values allow, and at which place of which answer the cause stands before flight.
 */
@NullMarked
package stillturning.replays;

import org.jspecify.annotations.NullMarked;

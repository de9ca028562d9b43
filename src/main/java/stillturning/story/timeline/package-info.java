/**
 * What happens after a failure, event by event. In: a candidate and a failure. Out: a story with
 * its events, traces and endurance. Owns charge, heat, delays, the engine and the pilot; knows no
 * file, no screen, and nothing of the structure room.
 */
@NullMarked
package stillturning.story.timeline;

import org.jspecify.annotations.NullMarked;

/**
 * What is noted on the way of a story beside its events: the first that a pilot can notice, and the
 * supplies while the engine is cranked. In: the situation at each instant, and the events told.
 * Out: values of the story room. Moves nothing; knows no device but supplies.
 */
@NullMarked
package stillturning.story.timeline.watch;

import org.jspecify.annotations.NullMarked;

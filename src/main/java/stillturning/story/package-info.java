/**
 * What can be told about a failure: what was supposed, what happened when and why, what became of
 * the engine. Values only, made by the timeline room and read by everybody above it. Knows no
 * solver, no file, no screen.
 */
@NullMarked
package stillturning.story;

import org.jspecify.annotations.NullMarked;

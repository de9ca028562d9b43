/**
 * One candidate, its parts, its wiring and its chances made of what a folder says. In: bound
 * entries and the catalogue. Out: a candidate of the model, or every problem at once at its place.
 * Opens no file, and knows no solver and no screen.
 */
@NullMarked
package stillturning.files.candidate;

import org.jspecify.annotations.NullMarked;

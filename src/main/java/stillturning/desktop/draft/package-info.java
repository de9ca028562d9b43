/**
 * A study's files while somebody edits them. In: a study's folder, and named changes. Out: the
 * texts as they are now, a reader over them, and files on disk that nobody's work is missing from.
 * Knows no screen, no solver, no report, and not what a change means to an aircraft.
 */
@NullMarked
package stillturning.desktop.draft;

import org.jspecify.annotations.NullMarked;

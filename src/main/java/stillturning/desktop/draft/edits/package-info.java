/**
 * What a person does to a candidate or a study, worked out as changes of its files. In: a file as
 * it is now, and what is wanted. Out: a change with a name, or why it cannot be made. Knows no
 * part's physics and no screen; whether a candidate makes sense is found by reading it.
 */
@NullMarked
package stillturning.desktop.draft.edits;

import org.jspecify.annotations.NullMarked;

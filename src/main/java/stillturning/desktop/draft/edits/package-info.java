/**
 * What a person does to a study and to its files as a whole, worked out as changes. In: the files
 * as they are now, and what is wanted. Out: a change with a name, or why it cannot be made. What is
 * done inside one candidate is worked out in {@code files.edit}. Knows no part's physics and no
 * screen.
 */
@NullMarked
package stillturning.desktop.draft.edits;

import org.jspecify.annotations.NullMarked;

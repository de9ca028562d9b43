/**
 * What a person does to a candidate, worked out as changes of its file. In: a file as it is now,
 * and what is wanted. Out: a change with a name, or why it cannot be made. Knows no part's physics
 * and no screen; whether a candidate makes sense is found by reading it.
 */
@NullMarked
package stillturning.files.edit;

import org.jspecify.annotations.NullMarked;

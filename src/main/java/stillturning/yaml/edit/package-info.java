/**
 * Edits of a document as values. In: a document and what to set, add, move or remove in it. Out:
 * the edited text with everything else as the person typed it, or a refusal that says why. Knows no
 * record type and no file.
 */
@NullMarked
package stillturning.yaml.edit;

import org.jspecify.annotations.NullMarked;

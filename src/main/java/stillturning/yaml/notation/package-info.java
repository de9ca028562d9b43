/**
 * What a record type says about how it is written: annotations on its components, texts with a form
 * of their own, values that keep their source. In: types and texts. Out: the same, for readers and
 * forms to follow. Knows no document, no part, no screen.
 */
@NullMarked
package stillturning.yaml.notation;

import org.jspecify.annotations.NullMarked;

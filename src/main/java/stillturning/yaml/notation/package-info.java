/**
 * What a record type says about how it is written: texts with a form of their own, values that keep
 * their source, kinds that a word chooses. In: types and texts. Out: the same, for readers and
 * forms to follow. Knows no document, no part, no screen.
 */
@NullMarked
package stillturning.yaml.notation;

import org.jspecify.annotations.NullMarked;

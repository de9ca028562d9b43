/**
 * Marks on records that describe the fields of a file: key, meaning, dimension, limits, default.
 * In: nothing. Out: what readers, schemas and forms are made from. Knows no file format, so that
 * what describes a part need not either.
 */
@NullMarked
package stillturning.quantity.field;

import org.jspecify.annotations.NullMarked;

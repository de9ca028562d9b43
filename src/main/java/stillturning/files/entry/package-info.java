/**
 * The fields of a study's and a candidate's file, as records, and the one-line notations in them.
 * In: bound YAML. Out: what was written, each measured value with its source. Knows no catalogue,
 * no expansion, and not whether names mean anything.
 */
@NullMarked
package stillturning.files.entry;

import org.jspecify.annotations.NullMarked;

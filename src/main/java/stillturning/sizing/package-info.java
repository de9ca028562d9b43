/**
 * Whether a candidate can be built as drawn: load analysis, wires, protectors, contacts, cranking,
 * weight, lists, and what would mend what is wrong. In: a study, a candidate, how it is laid. Out:
 * a {@link stillturning.sizing.SizingReport}. Knows no file, no screen, no words: only rules and
 * numbers.
 */
@NullMarked
package stillturning.sizing;

import org.jspecify.annotations.NullMarked;

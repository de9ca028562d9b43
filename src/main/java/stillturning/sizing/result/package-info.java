/**
 * What sizing found, as values: loads, wires, protectors, contacts, cranking, weight, lists, and
 * each rule that is broken. In: numbers. Out: a {@link stillturning.sizing.result.SizingReport} to
 * be printed or shown. Works out nothing but sums, and knows no words and no screen.
 */
@NullMarked
package stillturning.sizing.result;

import org.jspecify.annotations.NullMarked;

/**
 * Numbers with units, as people write them. In: text such as {@code 12 mohm} or {@code AWG 16}.
 * Out: SI values, or what is wrong with the text and what would be right; and SI values as text
 * again. Knows no part, no circuit, no file, no screen.
 */
@NullMarked
package stillturning.quantity;

import org.jspecify.annotations.NullMarked;

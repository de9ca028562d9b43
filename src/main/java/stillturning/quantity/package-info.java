/**
 * Numbers with units, as people write them. In: text such as {@code 12 mohm} or {@code AWG 16}.
 * Out: SI values, or what is wrong with the text and what would be right; and SI values as text
 * again. Knows no part, no circuit, no file, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What lasts is rounded down.</b> {@code Formats.lasting} is the only place that writes an
 *       endurance, so that ranking, requirements and stories print the same minutes, and never more
 *       than there are. Held by {@code FormatsTest} and {@code ReasonsTest}.
 *   <li><b>Tests run in a German locale</b> ({@code pom.xml}), so that a decimal comma from the
 *       reader's machine is found here first. Held by {@code FormatsTest} and by every test that
 *       compares printed text.
 * </ul>
 */
@NullMarked
package stillturning.quantity;

import org.jspecify.annotations.NullMarked;

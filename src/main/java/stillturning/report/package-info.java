/**
 * What was found, printed: sentences, tables, pages, data files. In: an assessment. Out: text. Adds
 * nothing to the results, and puts the cautions on everything that goes into an aircraft.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Kept results are no proof.</b> The folder {@code reports} holds what the program prints
 *       for Sandpiper, so that a person looks at any change ({@code FrozenReportsTest}). What is
 *       right is proved elsewhere: laws in every solved network ({@code Laws}), 361 of 402 networks
 *       and 38 of 39 whole stories against a general circuit simulator, which could not solve the
 *       rest (stored, with the scripts that make them), published tables beside the values, and
 *       {@code SandpiperByHandTest}.
 * </ul>
 */
@NullMarked
package stillturning.report;

import org.jspecify.annotations.NullMarked;

/**
 * What a search for simpler layouts found. In: an {@link
 * stillturning.report.explored.ExploredFront}. Out: blocks and a picture, which terminal and page
 * set alike. Knows no file and no change of a text, only the words of each step.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Families are told by what is counted</b>, kind of part by kind of part, over everything
 *       on the front; no sentence is written for a layout. What all of them have and no refused
 *       drawing has stands first. Held by {@code ExploreCommandTest}.
 *   <li><b>What was drawn stands among what was found</b>, each with how far it is from the front,
 *       because a builder asks for his own layout first.
 *   <li><b>What was not looked at is said</b> below the table, with what the search does not know.
 * </ul>
 */
@NullMarked
package stillturning.report.explored;

import org.jspecify.annotations.NullMarked;

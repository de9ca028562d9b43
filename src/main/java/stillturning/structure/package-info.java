/**
 * What a candidate's shape alone says: ways from sources to loads and back, parts that all of them
 * pass, smallest cuts, loops. In: an aircraft and a candidate. Out: findings in words and part
 * names. A second opinion: knows no network, no voltage, no time line, no file.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>The second opinion shares nothing with the first.</b> Only this room uses the graph
 *       library to judge a candidate, and it uses neither {@code network} nor {@code story}. How
 *       both are compared is a decision of {@code assess}. Held by {@code ArchitectureTest} and
 *       {@code CrossCheckTest}.
 * </ul>
 */
@NullMarked
package stillturning.structure;

import org.jspecify.annotations.NullMarked;

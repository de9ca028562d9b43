/**
 * What a candidate's shape alone says: ways from sources to loads and back, parts that all of them
 * pass, smallest cuts, loops. In: an aircraft and a candidate. Out: findings in words and part
 * names. A second opinion: knows no network, no voltage, no time line, no file.
 */
@NullMarked
package stillturning.structure;

import org.jspecify.annotations.NullMarked;

/**
 * What became of each candidate's failures, requirements and measures between two states of a
 * study. In: two assessments. Out: what differs. Knows no file and no words for people.
 */
@NullMarked
package stillturning.assess.change;

import org.jspecify.annotations.NullMarked;

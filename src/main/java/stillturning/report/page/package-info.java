/**
 * What is on the printed page, as finished text that the templates only set. In: nothing. Out:
 * plain records of words and pictures. Knows no candidate, no volt, no rank.
 */
@NullMarked
package stillturning.report.page;

import org.jspecify.annotations.NullMarked;

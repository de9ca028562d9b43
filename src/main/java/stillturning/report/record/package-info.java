/**
 * What was measured of a built aircraft beside what was predicted, as sentences, tables and JSON;
 * and the words of the form in which it is written down. In: what was compared and concluded. Out:
 * blocks for paper, page and terminal, and JSON. Adds nothing of its own.
 */
@NullMarked
package stillturning.report.record;

import org.jspecify.annotations.NullMarked;

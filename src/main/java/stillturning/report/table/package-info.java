/**
 * Tables told once: rows, and columns with a head, a unit and a getter. In: any records. Out: lines
 * for a terminal, comma-separated values; page, screen and JSON read the same columns. Knows no
 * result, no page and no screen.
 */
@NullMarked
package stillturning.report.table;

import org.jspecify.annotations.NullMarked;

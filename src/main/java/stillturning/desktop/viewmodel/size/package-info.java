/**
 * The sizes of the open candidate as a screen shows them: findings first, tables, files for a
 * spreadsheet, and sizes that would be better. In: the open study. Out: properties, lists and
 * values in words. Knows no scene; {@code sizing} does the computing.
 */
@NullMarked
package stillturning.desktop.viewmodel.size;

import org.jspecify.annotations.NullMarked;

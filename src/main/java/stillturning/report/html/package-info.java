/**
 * Results as one page. In: an assessment, sizes, pictures and what was found elsewhere. Out: HTML
 * that needs nothing from outside. Knows no terminal width, no file, no screen.
 */
@NullMarked
package stillturning.report.html;

import org.jspecify.annotations.NullMarked;

/**
 * Results as JSON for other programs. In: an assessment or a verdict. Out: text of a published
 * shape. Adds nothing to the results; knows no screen and no page.
 */
@NullMarked
package stillturning.report.json;

import org.jspecify.annotations.NullMarked;

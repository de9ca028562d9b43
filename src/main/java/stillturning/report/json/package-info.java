/**
 * Results as JSON for other programs. In: an assessment or a verdict. Out: text, and the schema
 * that it keeps to, both from one declaration of the fields. Adds nothing to the results; knows no
 * screen and no page.
 */
@NullMarked
package stillturning.report.json;

import org.jspecify.annotations.NullMarked;

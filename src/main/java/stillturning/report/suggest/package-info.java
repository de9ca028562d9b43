/**
 * What would mend a candidate, in sentences and as JSON. In: suggestions. Out: words for people,
 * and a document for programs. Knows no file and no search.
 */
@NullMarked
package stillturning.report.suggest;

import org.jspecify.annotations.NullMarked;

/**
 * One shape for each type that a document may hold: it reads, checks, explains and describes. In:
 * annotated record types and a document. Out: records or every problem at once, forms for a screen,
 * a JSON Schema of the same types. Knows no part, no study, no screen, and never changes a text.
 */
@NullMarked
package stillturning.yaml.shape;

import org.jspecify.annotations.NullMarked;

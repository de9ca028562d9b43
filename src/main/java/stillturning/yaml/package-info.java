/**
 * Hand-written YAML, read into records and written back without touching what the person wrote. In:
 * files, record types with annotations, edits as values. Out: records or every {@link
 * stillturning.yaml.Problem} at once with place and remedy, a JSON Schema of the same types, the
 * edited text. Knows quantities; knows no part, no study, no screen.
 */
@NullMarked
package stillturning.yaml;

import org.jspecify.annotations.NullMarked;

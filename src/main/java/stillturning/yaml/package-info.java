/**
 * Hand-written YAML as a document, and what is wrong with it. In: texts and files. Out: a tree of
 * values with the place of each, every {@link stillturning.yaml.Problem} with place and remedy, and
 * the text as it was typed, saved in one piece. Its subpackages read it into records and edit it.
 * Knows no part, no study, no screen.
 */
@NullMarked
package stillturning.yaml;

import org.jspecify.annotations.NullMarked;

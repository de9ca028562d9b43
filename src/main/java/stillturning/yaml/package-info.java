/**
 * Hand-written YAML as a document, and what is wrong with it. In: texts and files. Out: a tree of
 * values with the place of each, every {@link stillturning.yaml.Problem} with place and remedy, and
 * the text as it was typed, saved in one piece. Its subpackages read it into records and edit it.
 * Knows no part, no study, no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Files are bound by our own reader</b> over the nodes of snakeyaml-engine. People need
 *       every mistake at once, each with line, column and remedy. Turned down: a general binder,
 *       which stops at the first mistake or points at the object around it. Held by {@code
 *       BinderTest}, {@code HostileTextTest} and {@code ProblemTest}.
 *   <li><b>Writing back is splicing into the original text</b>, so that comments and order survive.
 *       Held by {@code YamlEditTest}, {@code YamlEditPropertyTest} and {@code SaveTest}.
 * </ul>
 */
@NullMarked
package stillturning.yaml;

import org.jspecify.annotations.NullMarked;

/**
 * Hand-written YAML, read into records and written back without touching what the person wrote. In:
 * files, record types with annotations, edits as values. Out: records, or every {@link
 * stillturning.yaml.Problem} at once with place and remedy; a JSON Schema of the same types; the
 * edited text. Knows quantities; knows no part, no study, no screen.
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

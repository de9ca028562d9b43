/**
 * What the builder takes away: the questions that a whole study is asked, candidate by candidate,
 * some of them for minutes, and the page that holds the answers. The caller is told how far the
 * work is, and ends it by throwing. Knows neither terminal nor screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A case of a study is looked up in each candidate separately</b> ({@code NamedFailures}).
 *       Where its words fit several failures, all of them are told and the worst is shown, so that
 *       a name never hides one. Loose names are known here and above only; {@code files} takes what
 *       is found wrong with them as further mistakes ({@code StudyReader.mistake}). Held by {@code
 *       FailureNamesTest} and {@code BreakCommandTest}.
 * </ul>
 */
@NullMarked
package stillturning.dossier;

import org.jspecify.annotations.NullMarked;

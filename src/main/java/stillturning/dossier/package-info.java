/**
 * What the builder walks away with: the questions that a whole study is asked, candidate by
 * candidate, some of them for minutes, and the page that holds the answers. Whoever waits is told
 * how far it is, and ends the work by throwing. Must know neither terminal nor screen.
 */
@NullMarked
package stillturning.dossier;

import org.jspecify.annotations.NullMarked;

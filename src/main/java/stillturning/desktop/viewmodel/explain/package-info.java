/**
 * What the page for the talk with a counsellor holds, and the builder's own words on it. The page
 * is that of the command line, to the byte.
 */
@NullMarked
package stillturning.desktop.viewmodel.explain;

import org.jspecify.annotations.NullMarked;

/**
 * The Break area without its screen: which failures there are to pick, what one leads to in one
 * candidate, the time within its story, how the drawing looks at that time, what the pilot has to
 * do; and the matrix of all failures by candidate. Knows no text of the study and changes none.
 */
@NullMarked
package stillturning.desktop.viewmodel.breaking;

import org.jspecify.annotations.NullMarked;

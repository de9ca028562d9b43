/**
 * The area in which a candidate is drawn: what can be added, the diagram, the values of what is
 * selected, what was found wrong, the text beside it. Shows what {@code desktop.viewmodel.draw}
 * says and passes on what the user does; knows no file format.
 */
@NullMarked
package stillturning.desktop.view.draw;

import org.jspecify.annotations.NullMarked;

/**
 * The area in which a candidate is drawn: what can be added, the diagram, the values of what is
 * chosen, what is to be said, the text beside it. Shows what {@code desk.draw} says and passes on
 * what the user does; knows no file format.
 */
@NullMarked
package stillturning.desktop.view.draw;

import org.jspecify.annotations.NullMarked;

/**
 * The Break area on the screen: failures to pick, the diagram at any moment of a story, its time
 * line, plots, what each load has, words and steps; the matrix of all failures; and what two do
 * together. Shows what {@code desktop.viewmodel.breaking} says; knows no engine.
 */
@NullMarked
package stillturning.desktop.view.breaking;

import org.jspecify.annotations.NullMarked;

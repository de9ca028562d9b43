/**
 * The area in which the user decides among candidates. Shows what {@code desktop.viewmodel.decide}
 * says and passes on what the user does; weighs and compares nothing itself.
 */
@NullMarked
package stillturning.desktop.view.decide;

import org.jspecify.annotations.NullMarked;

/**
 * Where measured values are entered, beside the page of Explain. Shows what {@code
 * desktop.viewmodel.record} says and passes on what the user does; compares nothing itself.
 */
@NullMarked
package stillturning.desktop.view.record;

import org.jspecify.annotations.NullMarked;

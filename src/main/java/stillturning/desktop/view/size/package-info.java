/**
 * The area in which sizes are compared with their limits. Shows what {@code desktop.viewmodel.size}
 * says and passes on what the user does; computes no size itself.
 */
@NullMarked
package stillturning.desktop.view.size;

import org.jspecify.annotations.NullMarked;

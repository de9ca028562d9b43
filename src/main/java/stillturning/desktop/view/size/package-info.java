/**
 * The area in which sizes are held against their limits. Shows what {@code desk.size} says and
 * passes on what the user does; computes no size itself.
 */
@NullMarked
package stillturning.desktop.view.size;

import org.jspecify.annotations.NullMarked;

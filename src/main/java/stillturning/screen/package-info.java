/**
 * The desktop's window and what it is made of; one room inside for each area. Shows what {@code
 * desk} says and passes on what the user does; holds no knowledge of its own.
 */
@NullMarked
package stillturning.screen;

import org.jspecify.annotations.NullMarked;

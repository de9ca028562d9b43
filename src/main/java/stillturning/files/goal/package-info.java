/**
 * What a study asks of its candidates, read: requirements, weights, scales. In: entries of the
 * study's file. Out: the model's goals, or mistakes with their places.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Weights are swings</b>: the worth of going from what is acceptable to what is enough by
 *       one criterion, against the one where that is worth most. Whether they are written as {@code
 *       weights} or as {@code swing}, they are the same numbers; swings have to have a 100, so that
 *       nobody gives them without having looked at the ends. Both at once are refused. Turned down:
 *       weights asked without ends, which nobody can give. Held by {@code PreferencesReaderTest}.
 * </ul>
 */
@NullMarked
package stillturning.files.goal;

import org.jspecify.annotations.NullMarked;

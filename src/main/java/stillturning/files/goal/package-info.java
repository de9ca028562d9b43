/**
 * What a study asks of its candidates, read: requirements, weights, scales. In: entries of the
 * study's file. Out: the model's goals, or mistakes with their places.
 */
@NullMarked
package stillturning.files.goal;

import org.jspecify.annotations.NullMarked;

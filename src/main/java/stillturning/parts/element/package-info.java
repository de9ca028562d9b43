/**
 * What a part does electrically, one behaviour a record: two terminals, constants, limits. In:
 * plain SI numbers. Out: descriptions that a time line can play. Knows no part kind, no network
 * solution, no failure, no file.
 */
@NullMarked
package stillturning.parts.element;

import org.jspecify.annotations.NullMarked;

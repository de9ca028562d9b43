/**
 * What failures do together: the search that may go on where it stopped, its sheets, command
 * run-up.
 */
@NullMarked
package stillturning.cli.joint;

import org.jspecify.annotations.NullMarked;

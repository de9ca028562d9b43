/** What was measured of the finished aircraft: command record. */
@NullMarked
package stillturning.cli.record;

import org.jspecify.annotations.NullMarked;

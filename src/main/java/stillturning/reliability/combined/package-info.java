/**
 * What failures do together, and what nobody sees of them. In: a study, a candidate, what it is
 * known to share. Out: minimal sets of events that end the engine, told by the time line. Knows no
 * file, no screen, and judges no single failure: that is {@code assess}.
 */
@NullMarked
package stillturning.reliability.combined;

import org.jspecify.annotations.NullMarked;

/**
 * Batteries in time: charge, warmth, and what watches over cells. In: cells and the current through
 * them. Out: voltage behind a resistance, margins and deadlines until a protection trips. Knows no
 * other device, no pilot, no engine.
 */
@NullMarked
package stillturning.story.device.battery;

import org.jspecify.annotations.NullMarked;

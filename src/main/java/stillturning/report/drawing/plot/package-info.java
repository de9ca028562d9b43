/**
 * Values over time as a picture: panels, bars of states, a strip of events. In: series, thresholds,
 * states and events with their texts. Out: a picture and where its panels lie. Knows no diagram, no
 * part, no model, no file, no screen.
 */
@NullMarked
package stillturning.report.drawing.plot;

import org.jspecify.annotations.NullMarked;

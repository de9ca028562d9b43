/**
 * A candidate for other programs: as a graph, and as a circuit. In: a candidate and its study. Out:
 * text in open formats. Knows no story and no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>GraphML has a vertex for each part and for each net</b>, and an edge for each terminal:
 *       so parts with many terminals stay whole, and nothing is lost. (GraphML 1.0, from memory.)
 *   <li><b>The netlist is the instant after all charging is lost</b>, levers as in flight, each
 *       intermittent load at its average. It holds what every circuit simulator of the SPICE family
 *       knows: R, V, I, D and a source whose current is a formula (B). Turned down: alternators
 *       with their limits and batteries while they are charged, whose laws have no plain element;
 *       both would make other programs disagree for reasons that are no error. Held by {@code
 *       NetlistTest}, which solves it again.
 *   <li><b>Names are comments</b>: a simulator's names are numbers, so that no label can be read as
 *       a command.
 * </ul>
 */
@NullMarked
package stillturning.report.export;

import org.jspecify.annotations.NullMarked;

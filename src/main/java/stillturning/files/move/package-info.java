/**
 * Small changes of a candidate's drawing, of which bigger ones are made: a second path, a battery
 * less, a ground of its own. In: one candidate as it is drawn. Out: every {@link
 * stillturning.files.move.Move} that can be made there, and the drawing after it, as a text that a
 * person could have written. Knows no story: what a move is good for is found by assessing.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A move changes the file, not the model.</b> So whatever is found by moves can be saved,
 *       read and changed by hand, with every comment where it was, and what is assessed is what the
 *       file says. It costs some milliseconds a move, where an assessment costs hundreds. Turned
 *       down: moves on the model and a writer of files, which would lose what a person wrote. Held
 *       by {@code EveryMoveTest}.
 *   <li><b>New things are of the catalogue's classes, and say guess.</b> Lengths are left out, so
 *       that they follow from the zones, and gauges are sized by the reader.
 *   <li><b>What takes a runaway off depends on what makes the field.</b> A winding without current
 *       makes none, so a guard in its line is enough. Magnets stay, and a regulator that is shorted
 *       asks for no supply, so the output is opened by a relay. The guard and the switch of the
 *       supply hold it in, and the regulator is fed past them: else it would fall silent with the
 *       switch, and hide a relay that is welded. Common practice, no published source. Turned down:
 *       one line for both. Held by {@code OverVoltageTest}.
 *   <li><b>Each kind of move is a class of its own</b> ({@code Finder}), which knows the others
 *       not. Their order is that of the list in {@code Moves}, and of the file within each.
 * </ul>
 */
@NullMarked
package stillturning.files.move;

import org.jspecify.annotations.NullMarked;

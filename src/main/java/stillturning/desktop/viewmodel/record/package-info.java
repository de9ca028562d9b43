/**
 * What was measured of a built aircraft, entered in the window: the blanks of the form that command
 * {@code record} writes, held against what is predicted by the same engine, added to the same
 * record.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What is typed is a form.</b> The blanks become the text of a form, which is read as one
 *       that came from a file: the same notations, the same mistakes. Held by {@code RecordingTest}
 *       against the command.
 *   <li><b>What is typed is kept at once</b>, as a form beside the record, until it is added to it;
 *       a window that is closed, or a study that changes, loses nothing. What the study no longer
 *       asks for stays and is said.
 * </ul>
 */
@NullMarked
package stillturning.desktop.viewmodel.record;

import org.jspecify.annotations.NullMarked;

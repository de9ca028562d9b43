/**
 * What the desktop shows, without a screen: the open study, what was found out about it and whether
 * that still holds, the user's settings, work in the background. One package inside for each area.
 * Uses properties and lists of JavaFX's base, and never a scene, a stage or the toolkit.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>What the desktop shows is known without a toolkit.</b> This package holds it as
 *       properties and lists, works in the background by {@code BackgroundWork} (one piece of work
 *       of each name, the newest wins, answers on the screen's thread) and is tested like
 *       everything else; {@code desktop.view} only shows it. An {@code Area} is made when it is
 *       first shown. Turned down: logic in controllers, which only a robot can test. Held by {@code
 *       ArchitectureTest} and {@code BackgroundWorkTest}.
 *   <li><b>Notices instead of dialogs.</b> A question that stops all work is answered without being
 *       read, so a {@code Notice} stays above the area until it is answered. The exceptions are a
 *       new name, the text about the program, and the system's choosers of files and printers. Held
 *       by {@code ExplainAreaTest}.
 * </ul>
 */
@NullMarked
package stillturning.desktop.viewmodel;

import org.jspecify.annotations.NullMarked;

/**
 * What the desktop shows, without a screen: the open study, what was found out about it and whether
 * that still holds, the user's settings, work in the background. One room inside for each area.
 * Uses properties and lists of JavaFX's base, and never a scene, a stage or the toolkit.
 */
@NullMarked
package stillturning.desktop.viewmodel;

import org.jspecify.annotations.NullMarked;

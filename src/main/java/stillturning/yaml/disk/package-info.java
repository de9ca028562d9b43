/**
 * How every file of this program reaches the disk: whole or not at all, and by one writer at a time
 * where two would undo each other's work. Knows nothing of what stands in a file.
 *
 * <p>A draft has its writer's process in its name, so two writers never share one, and one that a
 * killed program left is known and taken away by the next that writes the same file. Turned down:
 * one fixed name for the draft (two writers tore each other's), and locks on drafts (a lock ends
 * before the rename). {@code WholeFileTest} holds it.
 */
@NullMarked
package stillturning.yaml.disk;

import org.jspecify.annotations.NullMarked;

/**
 * A study's files while somebody edits them. In: a study's folder, and named changes. Out: the
 * texts as they are now, a reader over them, and files on disk in which nobody's work is missing.
 * Knows no screen, no solver, no report, and not what a change means to an aircraft.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>Nothing that was edited is lost.</b> Each change is written within a second to a journal
 *       outside the study ({@code JournalPolicy}). Each program holds its own journal by a lock
 *       ({@code FileClaim}), and the next program that opens the study is offered what was never
 *       saved, whether the earlier one was killed or just closed. What is saved stands in the
 *       journal first, so that a saving that is killed leaves no older work beside newer files.
 *       Saving is whole or not at all, and the version before stays beside it with a {@code ~}. A
 *       file that somebody else changed is taken over, merged line by line where the two changes do
 *       not touch, or asked about place by place, where only the disputed lines are chosen; it is
 *       never overwritten. Hidden copies that an interrupted saving left are cleared at the next
 *       opening. None of this opens a dialog: notices stay above the area until they are answered.
 *       Held by {@code RecoveryTest} and {@code KilledDraftTest}, which kill a program, {@code
 *       OutsideTest}, {@code LineMergeTest} and {@code SaveTest}.
 *   <li><b>A change is a list of steps on texts.</b> Every edit is a splice that is compared with
 *       what was meant, undo keeps splices across files, and what is brought in from outside or
 *       from a journal is a change like any other, so it can be taken back. Turned down: undo on
 *       objects, which loses comments. Held by {@code DraftTest} and {@code ShapingPropertyTest}.
 * </ul>
 */
@NullMarked
package stillturning.desktop.draft;

import org.jspecify.annotations.NullMarked;

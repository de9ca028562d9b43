/**
 * The search for simpler layouts. In: a study and its reader. Out: {@link
 * stillturning.dossier.exploration.Explored}: what nothing found outdoes, by how many changes from
 * which drawing. Writes nothing to disk; knows no command line and no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A layout is a file.</b> Each step is a change of the text, read back like any other; so
 *       what is found can be saved, opened and assessed by anybody, and what the reader refuses is
 *       no layout. At the end everything on the front is read and assessed again in full, and that
 *       is what is told of it. Held by {@code ExploreCommandTest}.
 *   <li><b>Refusing is quick, and sound.</b> A layout is held against the hard requirements in the
 *       order of what they cost: weight, price and acts first, one story of charging lost, the
 *       failures that decided of the layout it was made from, the other single failures. Each of
 *       them is judged as in the full assessment, so one that breaks a requirement there breaks it
 *       here. Shape alone refuses nothing, because it knows less than the stories. Held by {@code
 *       ScrutinyTest}.
 *   <li><b>Values are compared in steps that a builder would notice</b> (0.1 kg, a minute, ten of
 *       the currency). Otherwise the front fills with layouts that differ by a gram.
 *   <li><b>Bare layouts are what is left of a drawing</b> once everything was taken out without
 *       which the engine still runs, nothing failing: of the baseline all of it, and of the one
 *       with the most batteries all but these. From there the search builds up; from the drawings
 *       it mostly takes away.
 *   <li><b>What is kept of a search is drawings, not claims.</b> Told again, each is read and
 *       assessed in full by the program that tells it. Held by {@code ExploredChapterTest}.
 * </ul>
 */
@NullMarked
package stillturning.dossier.exploration;

import org.jspecify.annotations.NullMarked;

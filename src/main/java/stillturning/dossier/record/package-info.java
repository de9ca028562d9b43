/**
 * A built aircraft beside its study: the form of a candidate, what was filled in held against what
 * is predicted, values that could be taken into the study, and what the record says. In: a study
 * that was read, a form, a log. Out: {@link stillturning.report.record.AsBuilt}, changed files that
 * are not yet written, and chapters for the dossier.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A measured capacity becomes the battery's health</b>, since its rating stays what its
 *       maker printed; only where more was measured than is rated, the rating is replaced. A
 *       measured resistance is freed of that age before it is offered. Held by {@code
 *       RecordCommandTest}.
 *   <li><b>A wire has no resistance of its own in the study</b>, so none is offered: what is
 *       measured beyond its copper is told as what sits at its ends.
 *   <li><b>The dossier shows each measurement beside the prediction of its day</b>, as the record
 *       keeps both, and says where the study has changed since. Turned down: predicting again, so
 *       that a failed test turns into one that passed because somebody edited the study.
 * </ul>
 */
@NullMarked
package stillturning.dossier.record;

import org.jspecify.annotations.NullMarked;

/**
 * Other sizes for a candidate, written into a copy of its file. In: a study's reader and a report
 * on sizes. Out: a {@link stillturning.dossier.proposal.Proposal}. Writes nothing to disk; knows no
 * command line and no screen.
 *
 * <p>Decisions:
 *
 * <ul>
 *   <li><b>A proposal is found by trying.</b> Every guarded wire is made as thin as its rules
 *       allow. That is written into a copy of the file by splices, read back and sized again; from
 *       then on wires only become thicker, until nothing is left that a size mends. A wire that
 *       nothing guards is never made thinner. Held by {@code SizeCommandTest}.
 * </ul>
 */
@NullMarked
package stillturning.dossier.proposal;

import org.jspecify.annotations.NullMarked;

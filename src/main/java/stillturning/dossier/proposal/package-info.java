/**
 * Other sizes for a candidate, written into a copy of its file. In: a study's reader and a report
 * on sizes. Out: a {@link stillturning.dossier.proposal.Proposal}. Writes nothing to disk; knows no
 * command line and no screen.
 */
@NullMarked
package stillturning.dossier.proposal;

import org.jspecify.annotations.NullMarked;

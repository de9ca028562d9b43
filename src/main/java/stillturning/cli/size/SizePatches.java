package stillturning.cli.size;

import java.io.IOException;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.ProblemText;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.SizedCandidates;
import stillturning.dossier.proposal.NoProposal;
import stillturning.dossier.proposal.Proposal;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizingReport;

/**
 * Sizes that meet every rule, as patches of the candidates' files. Everything but the patch stands
 * in lines that patch programs skip.
 *
 * @param apply whether to write them into the files
 */
record SizePatches(FoundStudy found, boolean apply, CommandContext context) {

    void print(SizedCandidates sized, Output out) {
        sized.untold().forEach(reason -> out.paragraph("# ", reason));
        sized.reports().forEach(report -> print(proposal(report), out));
    }

    private Proposal proposal(SizingReport report) {
        try {
            return Proposal.of(found.reader(), report.candidate().id(), report, round -> {});
        } catch (NoProposal e) {
            String problems = ProblemText.of(e.problems());
            throw new Refusal(e.getMessage() + (problems.isEmpty() ? "" : "\n" + problems));
        }
    }

    private void print(Proposal proposal, Output out) {
        String shown = context.shown(proposal.before().file());
        if (!proposal.changes()) {
            out.line("# " + shown + ": nothing to change");
        }
        out.raw(UnifiedDiff.of(shown, proposal.before().text(), proposal.after().text()));
        long left =
                proposal.left().stream()
                        .filter(f -> f.rule().gravity() == Rule.Gravity.WRONG)
                        .count();
        if (left > 0) {
            out.line("# " + shown + ": " + left + " broken limits are left, which no size mends");
        }
        if (apply && proposal.changes()) {
            save(proposal, shown);
            out.line("# written: " + shown + "; as it was: " + shown + "~");
        }
    }

    private static void save(Proposal proposal, String shown) {
        try {
            proposal.after().save();
        } catch (IOException e) {
            throw new Refusal(shown + " cannot be written: " + e.getMessage());
        }
    }
}

package stillturning.cli.size;

import stillturning.cli.study.CandidateNames;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.ProblemText;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.dossier.SizedCandidates;
import stillturning.dossier.proposal.NoProposal;
import stillturning.dossier.proposal.Proposal;
import stillturning.model.Candidate;
import stillturning.report.json.JsonReport;
import stillturning.report.sizes.SelectivityTable;
import stillturning.report.sizes.SizeFiles;
import stillturning.report.sizes.SizeTables;
import stillturning.sizing.Rule;
import stillturning.sizing.SizingReport;

/** Holds loads, wires and protectors against their limits. */
@Command(
        name = "size",
        description =
                "Hold loads, wires, protectors, contacts and sources against their published limits,"
                        + " over the phases of the flight and every single failure; weigh, and list"
                        + " what to buy. Tables are shown for one candidate.",
        footer = {
            "  stillturning size sandpiper",
            "  stillturning size sandpiper --candidate split-batteries",
            "  stillturning size sandpiper --candidate split-batteries --lists",
            "  stillturning size sandpiper --csv tables",
            "  stillturning size sandpiper --candidate split-batteries --propose"
        })
public final class SizeCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, with all its tables.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--lists",
            description = "Also show the bill of materials, the wire list and the labels.")
    private boolean lists;

    @Option(
            names = "--csv",
            paramLabel = "DIR",
            description = "Write every table into this folder, one file a table.")
    private Optional<String> csv = Optional.empty();

    @Option(
            names = "--propose",
            description =
                    "Show, as a patch of the candidate's file, the lightest wires and the protectors"
                            + " that meet every rule.")
    private boolean propose;

    @Option(
            names = "--apply",
            description =
                    "With --propose: write it into the file; the file as it was stays beside it"
                            + " under its name with a ~ behind.")
    private boolean apply;

    public SizeCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (apply && !propose) {
            throw new Refusal("--apply needs --propose");
        }
        if (propose && asked.json) {
            throw new Refusal("--propose prints a patch, so it does not go with --json");
        }
        FoundStudy found = FoundStudy.sound(asked.study, context);
        List<Candidate> candidates =
                candidate
                        .map(name -> List.of(CandidateNames.find(found.study(), name)))
                        .orElseGet(() -> found.study().candidates());
        SizedCandidates sized = sized(found, candidates, context);
        Output out = new Output(context);
        if (propose) {
            sized.untold().forEach(reason -> out.line(Paragraph.of("# ", reason)));
            sized.reports().forEach(report -> propose(found, report, out));
            return sized.untold().isEmpty() ? ExitCode.FINE : ExitCode.REQUIREMENT_MISSED;
        }
        if (asked.json) {
            out.raw(JsonReport.sizes(found.study().id(), sized.reports()));
        } else {
            tell(found, sized, out);
        }
        csv.ifPresent(folder -> write(folder, sized.reports(), out));
        if (!asked.json) {
            out.caution();
        }
        return sized.wrong() ? ExitCode.REQUIREMENT_MISSED : ExitCode.FINE;
    }

    /** Sizes of some candidates, telling how far it is where somebody waits. */
    public static SizedCandidates sized(
            FoundStudy found, List<Candidate> candidates, CommandContext context) {
        try (Progress progress = Progress.over(candidates.size(), "candidates sized", context)) {
            return SizedCandidates.of(found.study(), found.read(), candidates, progress);
        }
    }

    /** Everything but the patch stands in lines that patch programs skip. */
    private void propose(FoundStudy found, SizingReport report, Output out) {
        Proposal proposal = proposal(found, report);
        Path file = proposal.before().file();
        String shown = context.shown(file);
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
            save(proposal, shown, out);
        }
    }

    private static Proposal proposal(FoundStudy found, SizingReport report) {
        try {
            return Proposal.of(found.reader(), report.candidate().id(), report, round -> {});
        } catch (NoProposal e) {
            String problems = ProblemText.of(e.problems());
            throw new Refusal(e.getMessage() + (problems.isEmpty() ? "" : "\n" + problems));
        }
    }

    private static void save(Proposal proposal, String shown, Output out) {
        try {
            proposal.after().save();
            out.line("# written: " + shown + "; as it was: " + shown + "~");
        } catch (IOException e) {
            throw new Refusal(shown + " cannot be written: " + e.getMessage());
        }
    }

    private void tell(FoundStudy found, SizedCandidates sized, Output out) {
        SizeText text = new SizeText(found.read(), out);
        out.line(Paragraph.of("", found.study().heading().title()));
        sized.untold().forEach(reason -> out.line(Paragraph.of("", reason)));
        sized.reports().forEach(text::findings);
        if (sized.reports().size() == 1) {
            SizingReport only = sized.reports().get(0);
            text.tables(SizeTables.of(only));
            SizedCandidates.selectivity(found.study(), only.candidate())
                    .ifPresent(s -> text.tables(List.of(SelectivityTable.of(s))));
            if (lists) {
                text.tables(SizeTables.lists(sized.reports().get(0)));
            }
        } else {
            text.comparison(sized.reports());
            out.line("").line("With --candidate NAME the tables of one candidate are shown.");
        }
    }

    private void write(String folder, List<SizingReport> reports, Output out) {
        Path into = context.path(folder);
        try {
            Files.createDirectories(into);
            for (Map.Entry<String, String> file : SizeFiles.of(reports).entrySet()) {
                Files.writeString(into.resolve(file.getKey()), file.getValue());
            }
        } catch (IOException e) {
            throw new Refusal(
                    context.shown(into)
                            + " cannot be written ("
                            + e
                            + "); name another folder with --csv");
        }
        if (!asked.json) {
            out.line("").line("Written: " + context.shown(into));
        }
    }
}

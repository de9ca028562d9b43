package stillturning.cli.joint;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.model.Study.StudyHeading;
import stillturning.report.Cautions;
import stillturning.report.joint.CombinedFindings;
import stillturning.report.joint.RunUpSheet;
import stillturning.report.json.JsonReport;
import stillturning.report.terminal.BlockText;

/** Writes the card for the run-up before take-off. */
@Command(
        name = "run-up",
        description =
                "The card for the run-up: the fewest checks on the ground that reveal what nobody"
                        + " sees in flight and what ends the engine with one more failure. Takes a"
                        + " minute or more.",
        footer = {
            "  stillturning run-up sandpiper",
            "  stillturning run-up sandpiper --candidate split-batteries"
        })
public final class RunUpCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, by its name or title.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description = "Keep finished work in this file, and go on where it stopped.")
    private Optional<String> resume = Optional.empty();

    public RunUpCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FoundStudy found = asked.sound(context).only(candidate);
        JointWork work = ResumedSearch.of(found, JointSearch.PAIRS, resume, context);
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(JsonReport.runUp(found.study(), work.found(), work.reasons()));
        } else {
            found.mistakes().print(out);
            work.found().forEach(card -> print(found.study().heading(), card, out));
            JointSheets.leftOut(work, out);
        }
        return found.mistakes().exitCode(ExitCode.FINE);
    }

    /** A card to be cut out, so each has its own caution. */
    private static void print(StudyHeading study, CombinedFindings found, Output out) {
        out.section("Run-up card: " + study.title() + ", " + found.candidate().title());
        if (study.invented()) {
            out.paragraph("  ", Cautions.inFull(true).get(0));
        }
        out.paragraph("  ", Cautions.SHORT).line("");
        out.lines(BlockText.lines(RunUpSheet.of(found), out.paint()));
    }
}

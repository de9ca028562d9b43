package stillturning.cli.joint;

import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.dossier.JointSearch;
import stillturning.dossier.JointWork;
import stillturning.model.Study;
import stillturning.report.json.JsonReport;

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
        FoundStudy found = FoundStudy.sound(asked.study, context);
        Study study = found.only(candidate);
        Optional<Resumption> kept =
                resume.map(file -> Resumption.of(file, found.read().fingerprint(), context));
        JointWork work =
                ResumedSearch.of(study, found.read().chances(), JointSearch.PAIRS, kept, context);
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.runUp(study, work.found(), work.reasons()));
        } else {
            new JointText(study, work, out).runUp();
        }
        return ExitCode.FINE;
    }
}

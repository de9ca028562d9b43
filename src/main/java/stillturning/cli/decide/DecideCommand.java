package stillturning.cli.decide;

import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stillturning.assess.Guesses;
import stillturning.report.json.JsonReport;

/** Compares and ranks the candidates of a study. */
@Command(
        name = "decide",
        description =
                "Rank the candidates: hard requirements first, then by visible criteria, with the"
                        + " reasons and with how firmly the first one stands.",
        footer = {
            "  stillturning decide sandpiper",
            "  stillturning decide sandpiper --guesses",
            "  stillturning decide architectures/sandpiper --json > ranking.json"
        })
public final class DecideCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private GuessOptions guesses = new GuessOptions();

    public DecideCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FoundStudy found = FoundStudy.sound(asked.study, context);
        Assessed assessed = Assessed.of(found.study(), context);
        Optional<Guesses> tried = guesses.tried(found, assessed.assessment(), context);
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.decide(assessed.assessment(), tried));
        } else {
            assessed.comparison(out);
            tried.ifPresent(t -> assessed.guesses(t, out));
            out.caution();
        }
        return assessed.exitCode();
    }
}

package stillturning.cli.decide;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;

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
        FoundStudy found = asked.sound(context);
        Comparison comparison = Comparison.of(found, guesses, context);
        new Output(context).answer(comparison, asked.json());
        return comparison.exitCode();
    }
}

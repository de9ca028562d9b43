package stillturning.cli.check;

import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;

/** Reads a study and says what is wrong with it. */
@Command(
        name = "check",
        description =
                "Read the study and tell everything that is wrong with it, what is worth a second"
                        + " look, whether the engine runs with nothing wrong, and which values are"
                        + " guesses.",
        footer = {
            "  stillturning check sandpiper",
            "  stillturning check sandpiper --expanded",
            "  stillturning check sandpiper --json"
        })
public final class CheckCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--expanded",
            description = "Show which parts each sketch line became, with every value.")
    private boolean expanded;

    public CheckCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        StudyCheck check = StudyCheck.of(asked.read(context));
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(CheckJson.CHECK.longText(check));
        } else {
            new CheckText(check, out).tell(expanded);
        }
        return check.exitCode();
    }
}

package stillturning.cli;

import java.util.concurrent.Callable;
import picocli.AutoComplete;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;

/** Prints the script with which a shell completes commands and options. */
@Command(
        name = "completion",
        description = "Print a completion script for bash or zsh.",
        footer = "  source <(stillturning completion)")
final class CompletionCommand implements Callable<Integer> {

    private final CommandContext context;
    @Spec private CommandSpec spec = CommandSpec.create();

    CompletionCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        context.out().print(AutoComplete.bash(spec.root().name(), spec.root().commandLine()));
        return ExitCode.FINE;
    }
}

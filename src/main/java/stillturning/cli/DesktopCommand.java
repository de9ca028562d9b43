package stillturning.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;
import stillturning.cli.study.NamedFolder;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Refusal;
import stillturning.desktop.view.window.Desktop;

/** Opens the window. */
@Command(
        name = "desktop",
        description =
                "Open the desktop: draw, size, break, decide and explain in one window. Ends when"
                        + " the window is closed.",
        footer = {"  stillturning desktop", "  stillturning desktop sandpiper"})
final class DesktopCommand implements Callable<Integer> {

    private final CommandContext context;

    @Parameters(
            paramLabel = "STUDY",
            arity = "0..1",
            description = "Study to open: its folder, or its bare name.")
    private Optional<String> study = Optional.empty();

    DesktopCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<Path> studies = study.map(s -> NamedFolder.existing(s, context)).stream().toList();
        // only a program with a window may show a printer's dialog
        System.setProperty("java.awt.headless", "false");
        try {
            Desktop.open(studies);
        } catch (UnsupportedOperationException | UnsatisfiedLinkError none) {
            throw new Refusal(
                    "no window can be opened here ("
                            + none.getMessage()
                            + "); it needs a screen, and on Linux the libraries of GTK 3"
                            + " (libgtk-3-0 and libxtst6)");
        }
        return ExitCode.FINE;
    }
}

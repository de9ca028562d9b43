package stillturning.cli;

import java.io.BufferedReader;
import java.io.Console;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.io.PrintWriter;
import java.io.Reader;
import java.io.Writer;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.KeptFailure;
import stillturning.cli.terminal.Refusal;

/** Starts the program. */
public final class Main {

    private static final int WIDTH = 100;

    private Main() {}

    /** Runs one command on the process's own streams and ends the process with its exit code. */
    public static void main(String... args) {
        // newer Java hands out a console even where there is no terminal, unless told not to
        System.setProperty("jdk.console", "java.base");
        // pictures are drawn without a screen, and none is looked for
        System.setProperty("java.awt.headless", "true");
        Optional<Console> console = Optional.ofNullable(System.console());
        Charset charset =
                console.map(Console::charset).map(Main::wide).orElse(StandardCharsets.UTF_8);
        KeptFailure results = new KeptFailure(new FileOutputStream(FileDescriptor.out));
        PrintWriter out = writer(results, charset);
        PrintWriter err = writer(new FileOutputStream(FileDescriptor.err), charset);
        int code = run(out, err, System.in, console.isPresent(), args);
        out.flush();
        int told = written(results, code, err);
        err.flush();
        System.exit(told);
    }

    /** The exit code of a command whose results may not all have been written. */
    static int written(KeptFailure results, int code, PrintWriter err) {
        if (results.failure().isEmpty()) {
            return code;
        }
        if (results.readerIsGone()) {
            return ExitCode.READER_GONE;
        }
        err.println(
                "stillturning: the results could not all be written ("
                        + results.failure().get().getMessage()
                        + "); make room, or write them elsewhere");
        return ExitCode.INTERNAL;
    }

    // plain ASCII is what a machine says that was never told; its terminal knows better
    private static Charset wide(Charset said) {
        return said.equals(StandardCharsets.US_ASCII) ? StandardCharsets.UTF_8 : said;
    }

    private static PrintWriter writer(OutputStream where, Charset charset) {
        return new PrintWriter(new OutputStreamWriter(where, charset), false);
    }

    /**
     * Runs one command in the current folder.
     *
     * @param terminal whether a person sits in front of it: then there are questions, progress and,
     *     unless the environment has NO_COLOR, colours
     * @return the exit code: 0 fine, 1 a hard requirement is missed, 2 bad input, 3 internal
     */
    public static int run(
            PrintWriter out, PrintWriter err, InputStream in, boolean terminal, String... args) {
        String noColour = Optional.ofNullable(System.getenv("NO_COLOR")).orElse("");
        BufferedReader answers =
                new BufferedReader(new InputStreamReader(in, Charset.defaultCharset()));
        return run(
                new CommandContext(
                        out, err, answers, terminal, terminal && noColour.isEmpty(), Path.of("")),
                args);
    }

    static int run(CommandContext context, String... args) {
        Stillturning program = new Stillturning();
        try {
            return commandLine(program, context, args).execute(args);
        } catch (Throwable thrown) {
            return told(thrown, program, context);
        } finally {
            context.out().flush();
            context.err().flush();
        }
    }

    /** What the commands, their options and their words are, for a manual made from it. */
    public static CommandSpec definition() {
        PrintWriter nowhere = new PrintWriter(Writer.nullWriter());
        CommandContext context =
                new CommandContext(
                        nowhere,
                        nowhere,
                        new BufferedReader(Reader.nullReader()),
                        false,
                        false,
                        Path.of(""));
        return commandLine(new Stillturning(), context).getCommandSpec();
    }

    private static CommandLine commandLine(
            Stillturning program, CommandContext context, String... args) {
        return Commands.under(new CommandLine(program), context, args)
                .setOut(context.out())
                .setErr(context.err())
                .setUsageHelpWidth(WIDTH)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .setAbbreviatedOptionsAllowed(true)
                .setColorScheme(
                        CommandLine.Help.defaultColorScheme(context.colour() ? Ansi.ON : Ansi.OFF))
                .setParameterExceptionHandler((e, words) -> misused(e, context))
                .setExecutionExceptionHandler((e, line, parsed) -> told(e, program, context));
    }

    private static int misused(ParameterException e, CommandContext context) {
        context.err().println("stillturning: " + e.getMessage());
        UnmatchedArgumentException.printSuggestions(e, context.err());
        String name = e.getCommandLine().getCommandSpec().qualifiedName();
        context.err().println("'" + name + " --help' tells how it is used.");
        return ExitCode.BAD_INPUT;
    }

    /** Every error ends here. */
    private static int told(Throwable thrown, Stillturning program, CommandContext context) {
        if (program.stacktrace) {
            thrown.printStackTrace(context.err());
        }
        if (thrown instanceof Refusal) {
            context.err().println("stillturning: " + thrown.getMessage());
            return ExitCode.BAD_INPUT;
        }
        context.err()
                .println(
                        "stillturning: internal error: "
                                + thrown.toString().lines().findFirst().orElse("")
                                + "; this is a fault of the program: please report it with the"
                                + " command, the study's folder and what --stacktrace adds");
        return ExitCode.INTERNAL;
    }
}

package stillturning.cli.breaking;

import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.Mistakes;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;

/** Makes things fail and tells what follows. */
@Command(
        name = "break",
        description =
                "Make things fail. With --failure, tell what follows in time; without, show what"
                        + " every failure does to every candidate. Names may be written loosely: a"
                        + " part's name means all its ways to fail, more words narrow it down.",
        footer = {
            "  stillturning break sandpiper",
            "  stillturning break sandpiper --failure \"main bus short\"",
            "  stillturning break sandpiper --candidate split-batteries --failure alternator",
            "  stillturning break sandpiper --failure \"charging lost\" --pilot never",
            "  stillturning break sandpiper --candidate split-batteries"
                    + " --failure \"main bus short\" --plot bus.png",
            "  stillturning break sandpiper --failure \"master off\"",
            "  stillturning break sandpiper --failure \"main bus short\" --failure \"lead fuse does"
                    + " not open\"",
            "  stillturning break sandpiper --failure \"heat in engine\"",
            "  stillturning break sandpiper --failure alternator --in climb",
            "  stillturning break sandpiper --failure \"charging lost\" --every-phase",
            "  stillturning break sandpiper --cases",
            "  stillturning break sandpiper --pairs --candidate split-batteries"
                    + " --resume pairs.json",
            "  stillturning break sandpiper --causes",
            "  stillturning break sandpiper --latent",
            "  stillturning break sandpiper --candidate split-batteries"
                    + " --failure \"charging lost\" --ranges"
        })
public final class BreakCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, by its name or title.")
    private Optional<String> candidate = Optional.empty();

    @Mixin private BreakOptions options = new BreakOptions();

    public BreakCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        BreakQuestion question = BreakQuestion.of(options);
        FoundStudy found = asked.sound(context).only(candidate);
        Answer answer = question.answer(new BreakRequest(options, found, context));
        Output out = new Output(context);
        Mistakes mistakes = found.mistakes();
        if (!asked.json()) {
            mistakes.print(out);
        }
        out.answer(answer, asked.json());
        return mistakes.exitCode(ExitCode.FINE);
    }
}

package stillturning.cli.check;

import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.Assess;
import stillturning.cli.check.StudyCheck.Flying;
import stillturning.dossier.SizedCandidates;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.sizing.SizingReport;
import stillturning.story.UntoldStory;

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
        ReadStudy read = FoundStudy.read(asked.study, context);
        StudyCheck check =
                new StudyCheck(
                        read,
                        read.study().map(CheckCommand::flying).orElse(List.of()),
                        read.study().map(s -> sizes(s, read)).orElse(List.of()));
        Output out = new Output(context);
        if (asked.json) {
            out.raw(CheckJson.of(check));
        } else {
            new CheckText(check, out).tell(expanded);
        }
        return check.exitCode();
    }

    private static List<Flying> flying(Study study) {
        List<Flying> flying = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            flying.add(flying(study, candidate));
        }
        return flying;
    }

    /** What cannot be computed is told with normal flight. */
    private static List<SizingReport> sizes(Study study, ReadStudy read) {
        List<SizingReport> sizes = new ArrayList<>();
        for (Candidate candidate : study.candidates()) {
            SizedCandidates.quickly(study, candidate, read).ifPresent(sizes::add);
        }
        return sizes;
    }

    private static Flying flying(Study study, Candidate candidate) {
        try {
            return Flying.found(candidate, Assess.undisturbed(study, candidate));
        } catch (UntoldStory e) {
            return Flying.untold(candidate, String.valueOf(e.getMessage()));
        }
    }
}

package stillturning.cli.decide;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.size.StudySizes;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.Dossier;
import stillturning.dossier.Dossier.Asked;
import stillturning.dossier.Dossier.Jointness;
import stillturning.dossier.JointSearch;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.PageFile;
import stillturning.sizing.result.SizingReport;

/** Writes down the comparison with everything behind it. */
@Command(
        name = "explain",
        description =
                "Write the whole comparison into one HTML file for the talk with a counsellor:"
                        + " drawings, requirements, every failure, stories, assumptions.",
        footer = {
            "  stillturning explain sandpiper",
            "  stillturning explain sandpiper --guesses",
            "  stillturning explain sandpiper --pairs --resume pairs.json",
            "  stillturning explain sandpiper --html talk/sandpiper.html"
        })
public final class ExplainCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private GuessOptions guesses = new GuessOptions();

    @Option(
            names = "--html",
            paramLabel = "FILE",
            description = "File to write; STUDY.html in this folder if not given.")
    private Optional<String> html = Optional.empty();

    @Option(
            names = "--pairs",
            description =
                    "Also write what failures do together and how likely that is, common causes,"
                            + " latent failures and the run-up cards. Takes minutes.")
    private boolean pairs;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description =
                    "With --pairs: keep finished work in this file, and go on where it stopped.")
    private Optional<String> resume = Optional.empty();

    @Option(
            names = "--force",
            description = "Replace the file even if this program did not write it.")
    private boolean force;

    public ExplainCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (resume.isPresent() && !pairs) {
            throw new Refusal("--resume needs --pairs");
        }
        FoundStudy found = asked.sound(context);
        Path path = context.path(html.orElse(found.study().id() + ".html"));
        PageFile file = new PageFile(path);
        String shown = context.shown(path);
        if (!force && file.isAnothers()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with --html, or replace it with --force");
        }
        Comparison comparison = Comparison.of(found, guesses, context);
        write(file, shown, page(found, comparison));
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(comparison.json());
        } else {
            comparison.print(out);
            out.line("").line("Written: " + shown).caution();
        }
        return comparison.exitCode();
    }

    private String page(FoundStudy found, Comparison comparison) {
        Dossier dossier =
                new Dossier(
                        comparison.assessment(),
                        found.read(),
                        candidate -> NamedFailures.cases(found.study(), candidate));
        FoundStudy ranked = found.with(dossier.ranked());
        List<SizingReport> sizes = StudySizes.of(ranked, context).reports();
        return dossier.page(new Asked(comparison.guesses(), sizes, together(ranked)));
    }

    private Optional<Jointness> together(FoundStudy ranked) {
        if (!pairs || ranked.study().candidates().isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(
                new Jointness(
                        ResumedSearch.of(ranked, JointSearch.PAIRS, resume, context),
                        ResumedSearch.shared(ranked, context)));
    }

    private static void write(PageFile file, String shown, String page) {
        try {
            file.write(page);
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --html");
        }
    }
}

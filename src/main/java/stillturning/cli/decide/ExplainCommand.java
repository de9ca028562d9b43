package stillturning.cli.decide;

import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.joint.Resumption;
import stillturning.cli.size.SizeCommand;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Refusal;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.Guesses;
import stillturning.dossier.Dossier;
import stillturning.dossier.Dossier.Asked;
import stillturning.dossier.Dossier.Jointness;
import stillturning.dossier.JointSearch;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.PageFile;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.report.json.JsonReport;
import stillturning.sizing.SizingReport;

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
        FoundStudy found = FoundStudy.sound(asked.study, context);
        Path path = context.path(html.orElse(found.study().id() + ".html"));
        PageFile file = new PageFile(path);
        String shown = context.shown(path);
        if (!force && file.isAnothers()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with --html, or replace it with --force");
        }
        Assessed assessed = Assessed.of(found.study(), context);
        Optional<Guesses> tried = guesses.tried(found, assessed.assessment(), context);
        Dossier dossier =
                new Dossier(
                        assessed.assessment(),
                        found.read(),
                        candidate -> NamedFailures.cases(found.study(), candidate));
        Study ranked = dossier.ranked();
        write(
                file,
                shown,
                dossier.page(new Asked(tried, sizes(found, ranked), together(found, ranked))));
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.decide(assessed.assessment(), tried));
        } else {
            assessed.comparison(out);
            tried.ifPresent(t -> assessed.guesses(t, out));
            out.line("").line("Written: " + shown);
            out.caution();
        }
        return assessed.exitCode();
    }

    private Optional<Jointness> together(FoundStudy found, Study ranked) {
        if (!pairs || ranked.candidates().isEmpty()) {
            return Optional.empty();
        }
        Chances chances = found.read().chances();
        Optional<Resumption> kept =
                resume.map(file -> Resumption.of(file, found.read().fingerprint(), context));
        return Optional.of(
                new Jointness(
                        ResumedSearch.of(ranked, chances, JointSearch.PAIRS, kept, context),
                        ResumedSearch.shared(ranked, chances, context)));
    }

    private List<SizingReport> sizes(FoundStudy found, Study ranked) {
        return SizeCommand.sized(found, ranked.candidates(), context).reports();
    }

    private static void write(PageFile file, String shown, String page) {
        try {
            file.write(page);
        } catch (IOException e) {
            throw new Refusal(
                    shown + " cannot be written (" + e + "); name another file with --html");
        }
    }
}

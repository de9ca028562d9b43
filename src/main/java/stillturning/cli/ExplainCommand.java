package stillturning.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Guesses;
import stillturning.files.Assumption;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.report.Enclosed;
import stillturning.report.HtmlPage;
import stillturning.report.InOrder;
import stillturning.report.Sources;
import stillturning.report.Sources.SourceNote;
import stillturning.report.joint.JointChapters;
import stillturning.report.json.JsonReport;
import stillturning.report.page.JointSection;
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
final class ExplainCommand implements Callable<Integer> {

    private static final int PAIRS = 2;

    private final Surroundings around;
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

    ExplainCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        if (resume.isPresent() && !pairs) {
            throw new Refusal("--resume needs --pairs");
        }
        FoundStudy found = FoundStudy.sound(asked.study, around);
        Path path = around.path(html.orElse(found.study().id() + ".html"));
        PageFile file = new PageFile(path, around.shown(path));
        if (!force) {
            file.mustBeOurs();
        }
        Assessed assessed = Assessed.of(found.study(), around);
        Optional<Guesses> tried = guesses.tried(found, assessed.assessment(), around);
        file.write(
                HtmlPage.of(
                        assessed.assessment(),
                        sources(found.read()),
                        new Enclosed(
                                tried,
                                cases(assessed.assessment()),
                                sizes(found, assessed),
                                together(found, assessed))));
        Output out = new Output(around);
        if (asked.json) {
            out.raw(JsonReport.decide(assessed.assessment(), tried));
        } else {
            assessed.comparison(out);
            tried.ifPresent(t -> assessed.guesses(t, out));
            out.line("").line("Written: " + file.shown());
            out.caution();
        }
        return assessed.exitCode();
    }

    private Optional<JointSection> together(FoundStudy found, Assessed assessed) {
        if (!pairs || assessed.assessment().appraisals().isEmpty()) {
            return Optional.empty();
        }
        Study all = found.study();
        Study ranked =
                new Study(
                        all.id(),
                        all.heading(),
                        all.aircraft(),
                        all.goals(),
                        InOrder.of(assessed.assessment()).stream()
                                .map(a -> a.candidate())
                                .toList());
        Optional<Resumption> kept =
                resume.map(file -> Resumption.of(file, found.read().fingerprint(), around));
        JointWork work = JointWork.of(ranked, found.read().chances(), PAIRS, kept, around);
        return Optional.of(
                JointChapters.of(
                        ranked,
                        work.found(),
                        SharedWork.of(ranked, found.read().chances(), around),
                        work.reasons()));
    }

    /** Sizes of the candidates that could be assessed, best first. */
    private List<SizingReport> sizes(FoundStudy found, Assessed assessed) {
        List<Candidate> candidates =
                InOrder.of(assessed.assessment()).stream().map(a -> a.candidate()).toList();
        return Sized.of(found, candidates, around).reports();
    }

    private static List<CandidateCases> cases(Assessment assessment) {
        return InOrder.of(assessment).stream()
                .map(
                        appraisal ->
                                CandidateCases.of(
                                        appraisal,
                                        CaseNames.in(appraisal.candidate(), assessment.study())))
                .toList();
    }

    private static Sources sources(ReadStudy read) {
        List<SourceNote> notes = read.assumptions().stream().map(ExplainCommand::note).toList();
        return new Sources(read.fingerprint(), notes);
    }

    private static SourceNote note(Assumption a) {
        return new SourceNote(a.file(), a.path(), a.text(), a.origin().words(), a.note());
    }
}

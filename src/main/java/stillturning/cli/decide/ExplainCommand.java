package stillturning.cli.decide;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.size.StudySizes;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.KeptChanges;
import stillturning.cli.study.KeptLayouts;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.study.StudyAssessment;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.Dossier;
import stillturning.dossier.Dossier.FurtherAnswers;
import stillturning.dossier.Dossier.Jointness;
import stillturning.dossier.GroundTestWork;
import stillturning.dossier.JointSearch;
import stillturning.dossier.NamedFailures;
import stillturning.dossier.PageFile;
import stillturning.dossier.PairWork;
import stillturning.dossier.record.Recorded;
import stillturning.report.explored.ExploredChapter;
import stillturning.report.page.Document.Chapter;
import stillturning.report.paper.PaperContents.Edition;
import stillturning.report.pdf.PaperSize;
import stillturning.report.pdf.PdfSetter;
import stillturning.report.suggest.MendBlocks;
import stillturning.sizing.result.SizingReport;

/** Writes down the comparison with everything behind it. */
@Command(
        name = "explain",
        description =
                "Write the whole comparison into one HTML file, or a document for paper, for the"
                        + " talk with a counsellor: drawings, requirements, every failure, stories,"
                        + " assumptions.",
        footer = {
            "  stillturning explain sandpiper",
            "  stillturning explain sandpiper --guesses",
            "  stillturning explain sandpiper --pairs --resume pairs.json",
            "  stillturning explain sandpiper --html talk/sandpiper.html",
            "  stillturning explain sandpiper --explored front.json --mends mends.json",
            "  stillturning explain sandpiper --since sandpiper-in-spring",
            "  stillturning explain sandpiper --pdf sandpiper.pdf --paper letter --date 2030-06-15"
        })
public final class ExplainCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private GuessOptions guesses = new GuessOptions();
    @Mixin private PaperOptions paper = new PaperOptions();

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
            names = "--between",
            arity = "2",
            paramLabel = "CANDIDATE",
            description =
                    "Hold these two against each other; the first in the ranking and the next if"
                            + " not given.")
    private List<String> between = List.of();

    @Option(
            names = "--since",
            paramLabel = "OLD",
            description =
                    "Also tell what changed since an earlier state of the study, and which outcomes"
                            + " changed with it: its folder as it was, or a copy of one file. With"
                            + " --json these changes alone.")
    private Optional<String> since = Optional.empty();

    @Option(
            names = "--ground-test",
            description =
                    "Also write the plan of a test on the ground of the first candidate; see"
                            + " command ground-test. Takes a while.")
    private boolean groundTest;

    @Option(
            names = "--explored",
            paramLabel = "FILE",
            description =
                    "Also tell what else was looked at: simpler layouts that explore --keep has"
                            + " kept in this file. Each is assessed again.")
    private Optional<String> explored = Optional.empty();

    @Option(
            names = "--mends",
            paramLabel = "FILE",
            description =
                    "Also tell what would mend what is wrong: the lightest changes that suggest"
                            + " --lightest --keep has kept in this file. Each is assessed again.")
    private Optional<String> mends = Optional.empty();

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
        Edition edition = paper.edition();
        PaperSize size = paper.size();
        Optional<Wanted> onPaper = paper.file().map(this::wanted);
        FoundStudy found = asked.sound(context);
        Optional<Wanted> page =
                html.isPresent() || onPaper.isEmpty()
                        ? Optional.of(wanted(html.orElse(found.study().id() + ".html")))
                        : Optional.empty();
        Optional<Since> earlier = since.map(old -> Since.of(found, old, context));
        RankingAnswer comparison = RankingAnswer.of(found, guesses, context);
        Dossier dossier = dossier(found, comparison);
        FurtherAnswers beside = beside(found, dossier, comparison);
        page.ifPresent(
                file -> file.write(dossier.page(beside, edition).getBytes(StandardCharsets.UTF_8)));
        onPaper.ifPresent(file -> file.write(PdfSetter.pdf(dossier.paper(beside, edition), size)));
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(
                    earlier.map(state -> state.json(comparison.assessment()))
                            .orElseGet(comparison::json));
        } else {
            comparison.print(out);
            earlier.ifPresent(state -> state.print(comparison.assessment(), out));
            out.line("");
            Stream.concat(page.stream(), onPaper.stream())
                    .forEach(file -> out.line("Written: " + file.shown()));
            out.caution();
        }
        return comparison.exitCode();
    }

    /** A file that is to be written. */
    private record Wanted(PageFile file, String shown, String option) {

        void write(byte[] bytes) {
            try {
                file.write(bytes);
            } catch (IOException e) {
                throw Refusal.unwritten(shown, e, "file with " + option);
            }
        }
    }

    private Wanted wanted(String written) {
        Path path = context.path(written);
        PageFile file = new PageFile(path);
        String shown = context.shown(path);
        String option = paper.file().filter(written::equals).isPresent() ? "--pdf" : "--html";
        Path folder = path.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            throw new Refusal(
                    "there is no folder "
                            + folder
                            + " for "
                            + shown
                            + "; make it, or name another file with "
                            + option);
        }
        if (!force && file.isAnothers()) {
            throw new Refusal(
                    shown
                            + " is there already and was not written by this program; name another"
                            + " file with "
                            + option
                            + ", or replace it with --force");
        }
        return new Wanted(file, shown, option);
    }

    private static Dossier dossier(FoundStudy found, RankingAnswer comparison) {
        return new Dossier(
                comparison.assessment(),
                found.read(),
                candidate -> NamedFailures.cases(found.study(), candidate),
                Recorded.chapters(found.reader(), found.study(), found.read().fingerprint()));
    }

    private FurtherAnswers beside(FoundStudy found, Dossier dossier, RankingAnswer comparison) {
        FoundStudy ranked = found.with(dossier.ranked());
        Optional<PairWork> pair =
                between.isEmpty()
                        ? PairWork.ofFirstTwo(comparison.assessment())
                                .map(work -> work.marked(found.read()))
                        : Optional.of(Between.work(found.study(), between));
        List<SizingReport> sizes = StudySizes.of(ranked, context).reports();
        return new FurtherAnswers(
                comparison.guesses(),
                sizes,
                together(ranked),
                StudyAssessment.withEqualBatteries(comparison.assessment(), context),
                pair.map(work -> Between.of(work, context)),
                groundTest ? groundTest(dossier) : Optional.empty(),
                lookedAt(found));
    }

    /** What else was looked at: other layouts, then small changes. */
    private List<Chapter> lookedAt(FoundStudy found) {
        Optional<Chapter> layouts =
                explored.map(
                        file ->
                                ExploredChapter.of(
                                        KeptLayouts.again(file, found, context).front()));
        Optional<Chapter> changes =
                mends.map(
                        file ->
                                new MendBlocks(KeptChanges.again(file, found, context).mends())
                                        .chapter());
        return Stream.concat(layouts.stream(), changes.stream()).toList();
    }

    private Optional<Chapter> groundTest(Dossier dossier) {
        return GroundTestWork.ofFirst(dossier)
                .map(
                        work -> {
                            try (Progress progress =
                                    Progress.over(work.steps(), "failures tried", context)) {
                                return work.done(progress);
                            }
                        });
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
}

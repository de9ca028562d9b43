package stillturning.cli.record;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.ProblemText;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.record.AskedFor;
import stillturning.dossier.record.Causes;
import stillturning.dossier.record.Entered;
import stillturning.dossier.record.Held;
import stillturning.files.record.FilledForm;
import stillturning.files.record.FormReader;
import stillturning.model.Candidate;
import stillturning.report.record.AsBuilt;
import stillturning.report.record.MeasuredJson;
import stillturning.report.record.MeasuredSheet;
import stillturning.report.terminal.BlockText;
import stillturning.story.UntoldStory;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.disk.WholeFile;

/** Takes measured values and test results, and holds them against what is predicted. */
@Command(
        name = "record",
        description =
                "Take what was measured of the built aircraft: write a form to be filled in, read"
                        + " it back, or read the log of a discharge test; hold it against what is"
                        + " predicted, say what does not keep to it and which values would explain it,"
                        + " add it to the record beside the study, and offer it as measured values.",
        footer = {
            "  stillturning record sandpiper --candidate split-batteries --form bench.yaml",
            "  stillturning record sandpiper --candidate split-batteries bench.yaml",
            "  stillturning record sandpiper --candidate split-batteries --log discharge.csv"
                    + " --battery main-battery",
            "  stillturning record sandpiper --candidate split-batteries bench.yaml --date"
                    + " 2026-05-17 --save"
        })
public final class RecordCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private DischargeOptions discharge = new DischargeOptions();

    @Parameters(
            index = "1",
            arity = "0..1",
            paramLabel = "FILLED",
            description = "A form that was filled in.")
    private Optional<String> filled = Optional.empty();

    @Option(
            names = "--candidate",
            required = true,
            paramLabel = "NAME",
            description = "Which candidate was built, by its name or title.")
    private String candidate = "";

    @Option(
            names = "--form",
            paramLabel = "FILE",
            description = "Write the form of this candidate into a new file.")
    private Optional<String> form = Optional.empty();

    @Option(
            names = "--date",
            paramLabel = "DAY",
            description =
                    "Day of the measurements, such as 2026-05-17, where the form does not say it."
                            + " Without a day nothing is added to the record.")
    private Optional<String> date = Optional.empty();

    @Option(
            names = "--save",
            description =
                    "Also write the measured values into the study's files; each as it was stays"
                            + " beside it under its name with a ~ behind.")
    private boolean save;

    public RecordCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FoundStudy all = asked.sound(context);
        FoundStudy found = all.only(Optional.of(candidate));
        Candidate built = found.study().candidates().get(0);
        if (form.isPresent()) {
            if (filled.isPresent() || discharge.given()) {
                throw new Refusal("--form writes a form, so it goes with no FILLED and no --log");
            }
            return write(found, built, form.get());
        }
        if (filled.isEmpty() && !discharge.given()) {
            throw new Refusal("say what was measured: a form that was filled in, or --log CSV");
        }
        return take(found, built);
    }

    private Integer write(FoundStudy found, Candidate built, String file) {
        Path into = context.path(file);
        String shown = context.shown(into);
        if (Files.exists(into)) {
            throw new Refusal(shown + " is there already; name a new file with --form");
        }
        try {
            WholeFile.replace(into, planned(found).form().text().getBytes(StandardCharsets.UTF_8));
        } catch (UntoldStory e) {
            throw new Refusal(built.id() + " cannot be predicted: " + e.getMessage());
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "file with --form");
        }
        new Output(context)
                .paragraph(
                        "Written: "
                                + shown
                                + ". Take it to the aircraft with the plan that ground-test"
                                + " prints.")
                .caution();
        return ExitCode.FINE;
    }

    private static AskedFor planned(FoundStudy found) {
        Candidate built = found.study().candidates().get(0);
        try {
            return AskedFor.planned(found.study(), found.read(), built, tried -> {});
        } catch (UntoldStory e) {
            throw new Refusal(built.id() + " cannot be predicted: " + e.getMessage());
        }
    }

    private Integer take(FoundStudy found, Candidate built) {
        Optional<YamlDocument> document = filled.map(this::document);
        AskedFor all =
                document.isPresent()
                        ? planned(found)
                        : new AskedFor(found.study(), found.read(), built, Optional.empty());
        Optional<FilledForm> read = document.map(d -> read(all, d));
        String day = day(read.map(FilledForm::date).orElse(""));
        AsBuilt measured =
                explained(
                        found,
                        all,
                        Held.of(all, day, read, discharge.fit(found.study(), built, context)));
        Records records = new Records(found, built.id(), context);
        records.check();
        List<String> done = new ArrayList<>();
        done.add(records.add(Held.entry(measured, read, found.read().fingerprint())));
        if (save) {
            done.addAll(records.save(measured.offers()));
        }
        print(found, measured, done);
        return ExitCode.FINE;
    }

    private AsBuilt explained(FoundStudy found, AskedFor all, AsBuilt measured) {
        Causes causes = new Causes(found.reader(), all);
        int count = causes.count(measured);
        if (count == 0) {
            return measured;
        }
        try (Progress progress = Progress.over(count, "values tried", context)) {
            return measured.explained(causes.of(measured, progress));
        } catch (UntoldStory e) {
            return measured.saying(
                    List.of("What would explain it cannot be computed: " + e.getMessage() + "."));
        }
    }

    private void print(FoundStudy found, AsBuilt measured, List<String> done) {
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(MeasuredJson.AS_BUILT.text(measured.saying(done)));
            return;
        }
        out.section(
                "As built: "
                        + found.study().heading().title()
                        + ", "
                        + measured.candidate().title());
        out.lines(BlockText.lines(MeasuredSheet.of(measured), out.paint()));
        if (!save && !measured.offers().isEmpty()) {
            done.add("With --save these values are written into the study.");
        }
        out.line("");
        done.forEach(out::paragraph);
        out.caution();
    }

    private YamlDocument document(String file) {
        try {
            return YamlDocument.read(context.path(file));
        } catch (IOException e) {
            throw new Refusal(file + " cannot be read: " + e);
        }
    }

    private static FilledForm read(AskedFor all, YamlDocument document) {
        Entered entered = Entered.of(all, document);
        if (!entered.problems().isEmpty()) {
            throw new Refusal(
                    ProblemText.counted(entered.problems())
                            + " in the form; nothing was recorded\n"
                            + ProblemText.of(entered.problems()));
        }
        return entered.form();
    }

    private String day(String written) {
        date.filter(day -> !FormReader.isDay(day))
                .ifPresent(
                        day -> {
                            throw new Refusal(
                                    "--date: \"" + day + "\" is no day; write it as 2026-05-17");
                        });
        if (date.isPresent() && !written.isEmpty() && !date.get().equals(written)) {
            throw new Refusal(
                    "the form says " + written + ", --date says " + date.get() + "; say one");
        }
        return date.orElse(written);
    }
}

package stillturning.cli.groundtest;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.Function;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.reliability.groundtest.GroundTests;
import stillturning.report.Cautions;
import stillturning.report.groundtest.GroundTestSheet;
import stillturning.report.groundtest.GroundTestTables;
import stillturning.report.groundtest.PlannedTest;
import stillturning.report.json.JsonReport;
import stillturning.report.table.Csv;
import stillturning.report.table.Table;
import stillturning.report.terminal.BlockText;
import stillturning.story.UntoldStory;
import stillturning.yaml.disk.WholeFile;

/** Writes the plan of a test on the ground. */
@Command(
        name = "ground-test",
        description =
                "The plan of a test on the ground, before the first flight: what to pull, open or"
                        + " take off, what must happen then and what instruments must show, with"
                        + " blanks; and which single failures cannot be shown so. Takes a while.",
        footer = {
            "  stillturning ground-test sandpiper --candidate split-batteries",
            "  stillturning ground-test sandpiper --candidate split-batteries --csv test"
        })
public final class GroundTestCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, by its name or title.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--csv",
            paramLabel = "FOLDER",
            description =
                    "Also write the readings with empty cells for what is measured, and which step"
                            + " shows which failure, into this folder for a spreadsheet.")
    private Optional<String> csv = Optional.empty();

    public GroundTestCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        FoundStudy found = asked.sound(context).only(candidate);
        List<String> untold = new ArrayList<>();
        List<PlannedTest> tests = tests(found.study(), untold);
        Output out = new Output(context);
        Optional<String> written = csv.map(folder -> write(folder, tests));
        if (asked.json()) {
            out.raw(JsonReport.groundTests(found.study(), tests, untold));
        } else {
            found.mistakes().print(out);
            tests.forEach(test -> print(found.study().heading(), test, out));
            untold.forEach(words -> out.paragraph(words));
            written.ifPresent(folder -> out.line("").line("Written: " + folder));
        }
        return found.mistakes().exitCode(ExitCode.FINE);
    }

    private List<PlannedTest> tests(Study study, List<String> untold) {
        List<PlannedTest> tests = new ArrayList<>();
        List<String> engineLoads = study.aircraft().engine().logic().loads();
        try (Progress progress =
                Progress.over(study.candidates().size(), "candidates planned", context)) {
            for (Candidate one : study.candidates()) {
                try {
                    tests.add(new PlannedTest(one, engineLoads, GroundTests.of(study, one)));
                } catch (UntoldStory e) {
                    untold.add(one.id() + ": " + e.getMessage());
                }
                progress.accept(one.id());
            }
        }
        return tests;
    }

    /** A plan to be taken to the aircraft, so each has its own caution. */
    private static void print(Study.StudyHeading study, PlannedTest test, Output out) {
        out.section("Ground test plan: " + study.title() + ", " + test.candidate().title());
        if (study.invented()) {
            out.paragraph("  ", Cautions.inFull(true).get(0));
        }
        out.paragraph("  ", Cautions.SHORT).line("");
        out.lines(BlockText.lines(GroundTestSheet.of(test), out.paint()));
    }

    /** Writes both tables; the folder that they are in. */
    private String write(String folder, List<PlannedTest> tests) {
        Path into = context.path(folder);
        String shown = context.shown(into);
        try {
            Files.createDirectories(into);
            write(into, tests, GroundTestTables::form);
            write(into, tests, GroundTestTables::failures);
            return shown;
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "folder with --csv");
        }
    }

    private static void write(
            Path into, List<PlannedTest> tests, Function<PlannedTest, Table<?>> of)
            throws IOException {
        Map<String, Table<?>> tables = new LinkedHashMap<>();
        tests.forEach(test -> tables.put(test.candidate().id(), of.apply(test)));
        for (Table<?> first : tables.values().stream().limit(1).toList()) {
            WholeFile.replace(
                    into.resolve(first.name() + ".csv"),
                    Csv.of("candidate", tables).getBytes(StandardCharsets.UTF_8));
        }
    }
}

package stillturning.cli.size;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.SizedCandidates;
import stillturning.report.PrintedNames;
import stillturning.report.json.JsonReport;
import stillturning.report.sizes.SelectivityTable;
import stillturning.report.sizes.SizeFiles;
import stillturning.report.sizes.SizeTables;
import stillturning.sizing.result.SizingReport;
import stillturning.yaml.disk.WholeFile;

/** Holds loads, wires and protectors against their limits. */
@Command(
        name = "size",
        description =
                "Hold loads, wires, protectors, contacts and sources against their published limits,"
                        + " over the phases of the flight and every single failure; weigh, and list"
                        + " what to buy. Tables are shown for one candidate.",
        footer = {
            "  stillturning size sandpiper",
            "  stillturning size sandpiper --candidate split-batteries",
            "  stillturning size sandpiper --candidate split-batteries --lists",
            "  stillturning size sandpiper --candidate split-batteries --labels labels.pdf",
            "  stillturning size sandpiper --csv tables",
            "  stillturning size sandpiper --candidate split-batteries --propose"
        })
public final class SizeCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, with all its tables.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--lists",
            description = "Also show the bill of materials, the wire list and the labels.")
    private boolean lists;

    @Option(
            names = "--csv",
            paramLabel = "DIR",
            description = "Write every table into this folder, one file a table.")
    private Optional<String> csv = Optional.empty();

    @Option(
            names = "--propose",
            description =
                    "Show, as a patch of the candidate's file, the lightest wires and the protectors"
                            + " that meet every rule.")
    private boolean propose;

    @Option(
            names = "--apply",
            description =
                    "With --propose: write it into the file; the file as it was stays beside it"
                            + " under its name with a ~ behind.")
    private boolean apply;

    @Mixin private LabelOptions labels = new LabelOptions();

    public SizeCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (apply && !propose) {
            throw new Refusal("--apply needs --propose");
        }
        if (propose && asked.json()) {
            throw new Refusal("--propose prints a patch, so it does not go with --json");
        }
        labels.check(candidate.isPresent());
        FoundStudy found = asked.sound(context).only(candidate);
        SizedCandidates sized = StudySizes.of(found, context);
        Output out = new Output(context);
        if (propose) {
            new SizePatches(found, apply, context).print(sized, out);
            return sized.untold().isEmpty() ? ExitCode.FINE : ExitCode.REQUIREMENT_MISSED;
        }
        if (asked.json()) {
            out.raw(JsonReport.sizes(found.study().id(), sized.reports()));
            csv.ifPresent(folder -> write(folder, sized.reports()));
            labels.written(found, sized.reports(), context);
        } else {
            print(found, sized, out);
            csv.map(folder -> write(folder, sized.reports()))
                    .ifPresent(folder -> out.line("").line("Written: " + folder));
            labels.written(found, sized.reports(), context)
                    .ifPresent(file -> out.line("").line("Written: " + file));
            out.caution();
        }
        return sized.wrong() ? ExitCode.REQUIREMENT_MISSED : ExitCode.FINE;
    }

    private void print(FoundStudy found, SizedCandidates sized, Output out) {
        SizeText text = new SizeText(found.read(), out);
        out.paragraph(found.study().heading().title());
        sized.untold().forEach(out::paragraph);
        sized.reports().forEach(text::findings);
        if (sized.reports().size() == 1) {
            SizingReport only = sized.reports().get(0);
            PrintedNames names = new PrintedNames(only.candidate());
            text.tables(SizeTables.spoken(SizeTables.of(only), names));
            SizedCandidates.selectivity(found.study(), only.candidate())
                    .ifPresent(
                            s ->
                                    text.tables(
                                            SizeTables.spoken(
                                                    List.of(SelectivityTable.of(s)), names)));
            if (lists) {
                text.tables(SizeTables.spoken(SizeTables.lists(only), names));
            }
        } else {
            text.comparison(sized.reports());
            out.line("").line("With --candidate NAME the tables of one candidate are shown.");
        }
    }

    /** Writes every table; the folder that they are in. */
    private String write(String folder, List<SizingReport> reports) {
        Path into = context.path(folder);
        String shown = context.shown(into);
        try {
            Files.createDirectories(into);
            for (Map.Entry<String, String> file : SizeFiles.of(reports).entrySet()) {
                WholeFile.replace(
                        into.resolve(file.getKey()),
                        file.getValue().getBytes(StandardCharsets.UTF_8));
            }
            return shown;
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "folder with --csv");
        }
    }
}

package stillturning.cli.check;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.files.ReadStudy;
import stillturning.model.Candidate;
import stillturning.report.export.GraphMl;
import stillturning.report.export.Netlist;
import stillturning.yaml.disk.WholeFile;

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
            "  stillturning check sandpiper --export circuits",
            "  stillturning check sandpiper --json"
        })
public final class CheckCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--expanded",
            description = "Show which parts each sketch line became, with every value.")
    private boolean expanded;

    @Option(
            names = "--export",
            paramLabel = "DIR",
            description =
                    "Also write every candidate into this folder for other programs: as a graph"
                            + " (GraphML) and as a circuit (netlist for simulators of the SPICE"
                            + " family), the instant after all charging is lost.")
    private Optional<String> export = Optional.empty();

    public CheckCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Optional<String> written = export.map(folder -> write(folder, asked.sound(context)));
        StudyCheck check = checked(asked.read(context));
        Output out = new Output(context);
        if (asked.json()) {
            out.raw(CheckJson.CHECK.longText(check));
        } else {
            new CheckText(check, out).tell(expanded);
            written.ifPresent(folder -> out.line("").line("Written: " + folder));
        }
        return check.exitCode();
    }

    private StudyCheck checked(ReadStudy read) {
        int candidates = read.study().map(study -> study.candidates().size()).orElse(0);
        try (Progress progress =
                Progress.over(
                        candidates * StudyCheck.STEPS_A_CANDIDATE,
                        "steps done (normal flight and sizes of each candidate)",
                        context)) {
            return StudyCheck.of(read, progress);
        }
    }

    private String write(String folder, FoundStudy found) {
        Path to = context.path(folder);
        String shown = context.shown(to);
        try {
            Files.createDirectories(to);
            for (Candidate candidate : found.study().candidates()) {
                put(to, candidate.id() + ".graphml", GraphMl.of(candidate));
                put(to, candidate.id() + ".cir", Netlist.of(candidate, found.study()));
            }
            return shown;
        } catch (IOException e) {
            throw Refusal.unwritten(shown, e, "folder with --export");
        }
    }

    private static void put(Path folder, String name, String text) throws IOException {
        WholeFile.replace(folder.resolve(name), text.getBytes(StandardCharsets.UTF_8));
    }
}

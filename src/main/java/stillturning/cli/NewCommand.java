package stillturning.cli;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.cli.study.NamedFolder;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Questions;
import stillturning.cli.terminal.Refusal;
import stillturning.files.Starter;
import stillturning.files.Starter.AirframeStructure;
import stillturning.files.Starter.Counts;
import stillturning.files.Starter.LoadProtection;
import stillturning.files.Starter.Nominal;
import stillturning.files.Starter.StarterAnswers;
import stillturning.report.json.JsonDocument;
import stillturning.yaml.Problem;

/** Makes a new study from a few answers. */
@Command(
        name = "new",
        description =
                "Make a new study with four candidates to start from, two of them alike but for"
                        + " breakers or electronic switching. At a terminal it asks what it needs to"
                        + " know; with any option it does not ask, and takes the first choice for what"
                        + " is not given. It never writes into a folder that has something in it.",
        footer = {
            "  stillturning new robin",
            "  stillturning new robin --batteries 1 --protection solid-state"
        })
final class NewCommand implements Callable<Integer> {

    private static final String BREAKERS = "breakers";
    private static final String SOLID_STATE = "solid-state";
    private static final List<String> TWO_OR_ONE = List.of("2", "1");
    private static final List<String> ONE_OR_TWO = List.of("1", "2");
    private static final List<String> PROTECTIONS = List.of(BREAKERS, SOLID_STATE);
    private static final List<String> VOLTAGES = List.of("14 V", "28 V");
    private static final List<String> STRUCTURES = List.of("metal", "none");

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(names = "--batteries", paramLabel = "1|2", description = "How many batteries.")
    private Optional<String> batteries = Optional.empty();

    @Option(names = "--charging-sources", paramLabel = "1|2", description = "How many alternators.")
    private Optional<String> alternators = Optional.empty();

    @Option(names = "--computers", paramLabel = "1|2", description = "How many engine computers.")
    private Optional<String> computers = Optional.empty();

    @Option(names = "--pumps", paramLabel = "1|2", description = "How many fuel pumps.")
    private Optional<String> pumps = Optional.empty();

    @Option(
            names = "--protection",
            paramLabel = "breakers|solid-state",
            description = "What protects and switches the loads.")
    private Optional<String> protection = Optional.empty();

    @Option(
            names = "--nominal",
            paramLabel = "VOLTS",
            description = "14 V or 28 V: the voltage while charging.")
    private Optional<String> nominal = Optional.empty();

    @Option(
            names = "--structure",
            paramLabel = "metal|none",
            description =
                    "Whether a metal structure leads current; none in wood or composite, where"
                            + " every return is a wire.")
    private Optional<String> structure = Optional.empty();

    NewCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        Path folder = NamedFolder.fresh(asked.study(), context);
        StarterAnswers answers = answers(title(folder));
        List<Problem> problems = Starter.write(folder, answers);
        if (!problems.isEmpty()) {
            throw new Refusal(
                    context.shown(folder)
                            + ": "
                            + problems.get(0).wrong()
                            + "; "
                            + problems.get(0).right());
        }
        List<String> files = List.copyOf(Starter.files(answers).keySet());
        if (asked.json()) {
            new Output(context).raw(WRITTEN.longText(new NewFiles(context.shown(folder), files)));
        } else {
            print(folder, files, Starter.alternative(answers));
        }
        return ExitCode.FINE;
    }

    /** What was written. */
    record NewFiles(String folder, List<String> files) {}

    /** What was written, for other programs. */
    static final JsonDocument<NewFiles> WRITTEN =
            new JsonDocument<>(
                    "A new study written",
                    "",
                    JsonDocument.<NewFiles>versioned()
                            .text("folder", NewFiles::folder)
                            .texts("files", NewFiles::files)
                            .says("Names of the files in it."));

    private void print(Path folder, List<String> files, List<String> alternative) {
        new Output(context)
                .line("Written to " + context.shown(folder) + ": " + String.join(", ", files))
                .line("with the schemas by which an editor completes words and shows mistakes.")
                .line(
                        "Its values are guesses to start from, not your aircraft's: put yours in"
                                + " their place, then")
                .line("  stillturning check " + asked.study())
                .line("  stillturning decide " + asked.study())
                .line("One layout is there twice, with breakers and with electronic switching:")
                .line(
                        "  stillturning decide "
                                + asked.study()
                                + " --between "
                                + String.join(" ", alternative));
    }

    private static String title(Path folder) {
        return String.valueOf(folder.toAbsolutePath().normalize().getFileName());
    }

    private StarterAnswers answers(String title) {
        Counts counts =
                new Counts(
                        number("batteries", batteries, "How many batteries?", TWO_OR_ONE),
                        number(
                                "charging-sources",
                                alternators,
                                "How many alternators?",
                                ONE_OR_TWO),
                        number("computers", computers, "How many engine computers?", TWO_OR_ONE),
                        number("pumps", pumps, "How many fuel pumps?", TWO_OR_ONE));
        String protecting =
                choose(
                        "protection",
                        protection,
                        "What protects and switches the loads?",
                        PROTECTIONS);
        String volts = choose("nominal", nominal, "Voltage while charging?", VOLTAGES);
        String conducts =
                choose(
                        "structure",
                        structure,
                        "Which structure leads current: metal, or none (wood, composite)?",
                        STRUCTURES);
        try {
            return new StarterAnswers(
                    title,
                    counts,
                    protecting.equals(SOLID_STATE)
                            ? LoadProtection.SOLID_STATE
                            : LoadProtection.BREAKERS,
                    volts.equals(VOLTAGES.get(0))
                            ? Nominal.FOURTEEN_VOLTS
                            : Nominal.TWENTY_EIGHT_VOLTS,
                    conducts.equals(STRUCTURES.get(0))
                            ? AirframeStructure.METAL
                            : AirframeStructure.NONE);
        } catch (IllegalArgumentException e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    private int number(
            String option, Optional<String> given, String question, List<String> choices) {
        return Integer.parseInt(choose(option, given, question, choices));
    }

    private String choose(
            String option, Optional<String> given, String question, List<String> choices) {
        if (given.isPresent()) {
            return Questions.chosen(given.get(), choices)
                    .orElseThrow(
                            () ->
                                    new Refusal(
                                            "--"
                                                    + option
                                                    + " \""
                                                    + given.get()
                                                    + "\" is none of: "
                                                    + String.join(", ", choices)));
        }
        return asks()
                ? new Questions(context.out(), context.in()).choose(question, choices)
                : choices.get(0);
    }

    private boolean asks() {
        return context.terminal()
                && !asked.json()
                && Stream.of(
                                batteries,
                                alternators,
                                computers,
                                pumps,
                                protection,
                                nominal,
                                structure)
                        .allMatch(Optional::isEmpty);
    }
}

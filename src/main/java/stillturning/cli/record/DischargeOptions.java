package stillturning.cli.record;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import picocli.CommandLine.Option;
import stillturning.cli.study.ProblemText;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.record.Discharged;
import stillturning.files.record.LogFile;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.quantity.Dimension;
import stillturning.quantity.MalformedQuantity;
import stillturning.quantity.Quantity;
import stillturning.reliability.asbuilt.UntellingLog;
import stillturning.report.record.Fit;
import stillturning.yaml.Spelling;

/** The log of a discharge test, as somebody names it. */
final class DischargeOptions {

    @Option(
            names = "--log",
            paramLabel = "CSV",
            description =
                    "Log of a discharge test: a head such as time (s), voltage (V), current (A),"
                            + " then a line a reading; commas, semicolons or tabs. Current counts above"
                            + " 0 while the battery gives.")
    private Optional<String> log = Optional.empty();

    @Option(
            names = "--battery",
            paramLabel = "NAME",
            description = "With --log: which battery was discharged.")
    private Optional<String> battery = Optional.empty();

    @Option(
            names = "--charge",
            paramLabel = "SHARE",
            description =
                    "With --log: how full it was at the first reading, such as \"100 %%\", if that"
                            + " is known; else it is concluded too.")
    private Optional<String> charge = Optional.empty();

    @Option(
            names = "--temperature",
            paramLabel = "DEGREES",
            description =
                    "With --log: how warm it was, such as \"18 degC\"; else that of its zone in the"
                            + " study.")
    private Optional<String> temperature = Optional.empty();

    boolean given() {
        return log.isPresent();
    }

    /** What the log says, if there is one. */
    Optional<Fit> fit(Study study, Candidate candidate, CommandContext context) {
        if (log.isEmpty()) {
            if (battery.isPresent() || charge.isPresent() || temperature.isPresent()) {
                throw new Refusal("--battery, --charge and --temperature need --log");
            }
            return Optional.empty();
        }
        Path file = context.path(log.get());
        Discharged discharged =
                new Discharged(
                        study,
                        candidate,
                        battery(candidate),
                        value(temperature.map(DischargeOptions::celsius)),
                        value(charge.map(DischargeOptions::share)));
        try {
            return Optional.of(
                    discharged.fit(read(file, context), String.valueOf(file.getFileName())));
        } catch (UntellingLog untelling) {
            throw new Refusal(context.shown(file) + ": " + untelling.why());
        }
    }

    private static OptionalDouble value(Optional<Double> value) {
        return value.map(OptionalDouble::of).orElse(OptionalDouble.empty());
    }

    private String battery(Candidate candidate) {
        List<String> names = Discharged.batteries(candidate);
        if (battery.isEmpty() && names.size() == 1) {
            return names.get(0);
        }
        String named =
                battery.orElseThrow(
                        () ->
                                new Refusal(
                                        "say with --battery which was discharged: "
                                                + String.join(", ", names)));
        if (!names.contains(named)) {
            throw new Refusal(
                    "there is no battery \"" + named + "\"; " + Spelling.choice(named, names));
        }
        return named;
    }

    private static double celsius(String text) {
        return quantity(text, Dimension.TEMPERATURE, "--temperature");
    }

    private static double share(String text) {
        double share = quantity(text, Dimension.RATIO, "--charge");
        if (!(share > 0 && share <= 1)) {
            throw new Refusal("--charge: " + text + " is not above 0 % and at most 100 %");
        }
        return share;
    }

    private static double quantity(String text, Dimension dimension, String option) {
        try {
            return Quantity.parse(text, dimension).si();
        } catch (MalformedQuantity wrong) {
            throw new Refusal(option + ": " + wrong.wrong() + "; " + wrong.right());
        }
    }

    private static List<LogFile.LogLine> read(Path file, CommandContext context) {
        LogFile.ReadLog read;
        try {
            read = LogFile.read(file);
        } catch (IOException e) {
            throw new Refusal(context.shown(file) + " cannot be read: " + e);
        }
        if (!read.problems().isEmpty()) {
            throw new Refusal(
                    ProblemText.counted(read.problems())
                            + " in the log; nothing was concluded\n"
                            + read.problems().stream()
                                    .map(String::valueOf)
                                    .collect(Collectors.joining("\n")));
        }
        return read.lines();
    }
}

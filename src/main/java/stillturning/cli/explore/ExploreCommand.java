package stillturning.cli.explore;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.KeptLayouts;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.PictureFile;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.ProgramVersion;
import stillturning.dossier.exploration.Exploration;
import stillturning.dossier.exploration.Explored;
import stillturning.files.edit.ChangeRefused;
import stillturning.model.goal.CriterionName;
import stillturning.report.explored.FrontBlocks;
import stillturning.report.explored.FrontJson;
import stillturning.report.explored.FrontPicture;
import stillturning.report.terminal.BlockText;
import stillturning.yaml.YamlDocument;
import stillturning.yaml.disk.WholeFile;

/** Looks for layouts that nothing outdoes. */
@Command(
        name = "explore",
        description =
                "Look for simpler layouts: from every candidate, change by change, what meets every"
                        + " hard requirement and is outdone by nothing that was looked at. Takes as"
                        + " long as you let it.",
        footer = {
            "  stillturning explore sandpiper",
            "  stillturning explore sandpiper --minutes 10 --resume explored.json --plot front.svg",
            "  stillturning explore sandpiper --keep front.json",
            "  stillturning explore sandpiper --again front.json --save layout-1",
            "  stillturning explore sandpiper --by weight --by endurance --save layout-2"
        })
public final class ExploreCommand implements Callable<Integer> {

    private static final String USUAL_MINUTES = "3";
    private static final String USUAL_CHANGES = "8";

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--by",
            paramLabel = "CRITERION",
            description =
                    "Compare by this: complexity, weight, endurance, cost, pilot-needed or"
                            + " engine-stops. May be repeated; the first three are usual.")
    private List<String> by = List.of();

    @Option(
            names = "--changes",
            paramLabel = "N",
            defaultValue = USUAL_CHANGES,
            description = "At most so many changes from a drawing (default: ${DEFAULT-VALUE}).")
    private int changes = Integer.parseInt(USUAL_CHANGES);

    @Option(
            names = "--minutes",
            paramLabel = "N",
            defaultValue = USUAL_MINUTES,
            description =
                    "End after so long (default: ${DEFAULT-VALUE}). What is found then hangs on the"
                            + " speed of the machine; with --layouts it does not.")
    private double minutes = Double.parseDouble(USUAL_MINUTES);

    @Option(
            names = "--layouts",
            paramLabel = "N",
            description = "End after so many layouts were tried, however long it takes.")
    private Optional<Integer> layouts = Optional.empty();

    @Option(
            names = "--save",
            paramLabel = "LAYOUT",
            description =
                    "Write a layout of the front into the study as a candidate; may be repeated.")
    private List<String> save = List.of();

    @Option(
            names = "--plot",
            paramLabel = "FILE",
            description = "Draw weight against complexity into a file that ends in .svg or .png.")
    private Optional<String> plot = Optional.empty();

    @Option(
            names = "--keep",
            paramLabel = "FILE",
            description = "Keep what is found in this file, for --again and explain --explored.")
    private Optional<String> keep = Optional.empty();

    @Option(
            names = "--again",
            paramLabel = "FILE",
            description =
                    "Look for nothing: tell what --keep has kept in this file, each layout assessed"
                            + " again.")
    private Optional<String> again = Optional.empty();

    @Option(
            names = "--pairs",
            description =
                    "Also count, for each layout of the front, the pairs of failures that end the"
                            + " engine. Takes minutes for each.")
    private boolean pairs;

    @Option(
            names = "--resume",
            paramLabel = "FILE",
            description = "Keep what was looked at in this file, and go on where it stopped.")
    private Optional<String> resume = Optional.empty();

    public ExploreCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        List<CriterionName> criteria = criteria();
        SearchLimits limits = limits();
        Optional<PictureFile> picture = plot.map(file -> PictureFile.named(file, context));
        keep.ifPresent(file -> KeptLayouts.claim(file, context));
        FoundStudy found = asked.sound(context);
        Explored front =
                again.map(file -> KeptLayouts.again(file, found, context))
                        .orElseGet(() -> explored(found, criteria, limits));
        Explored explored = pairs ? FrontPairs.counted(front, found, context) : front;
        Output out = new Output(context);
        List<String> written = new ArrayList<>();
        picture.ifPresent(file -> written.add(file.write(FrontPicture.of(explored.front()))));
        keep.ifPresent(file -> written.add(KeptLayouts.keep(file, explored, found, context)));
        save.forEach(name -> written.add(saved(explored, name, found)));
        if (asked.json()) {
            out.raw(FrontJson.EXPLORED.text(explored.front()));
        } else {
            found.mistakes().print(out);
            out.lines(BlockText.lines(new FrontBlocks(explored.front()).all(), out.paint()));
            written.forEach(out::line);
            out.caution();
        }
        return explored.front().front().isEmpty() ? ExitCode.REQUIREMENT_MISSED : ExitCode.FINE;
    }

    private List<CriterionName> criteria() {
        if (by.isEmpty()) {
            return Exploration.USUALLY_BY;
        }
        List<CriterionName> criteria = new ArrayList<>();
        for (String said : by) {
            CriterionName criterion =
                    Arrays.stream(CriterionName.values())
                            .filter(c -> written(c).equals(said))
                            .findFirst()
                            .orElseThrow(() -> noCriterion(said));
            if (!criteria.contains(criterion)) {
                criteria.add(criterion);
            }
        }
        return criteria;
    }

    private static String written(CriterionName criterion) {
        return criterion.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static Refusal noCriterion(String said) {
        return new Refusal(
                "--by \""
                        + said
                        + "\" is no criterion; write one of "
                        + String.join(
                                ", ",
                                Arrays.stream(CriterionName.values())
                                        .map(ExploreCommand::written)
                                        .toList()));
    }

    private SearchLimits limits() {
        if (changes < 1 || minutes <= 0 || layouts.orElse(1) < 1) {
            throw new Refusal("--changes, --minutes and --layouts must be above 0");
        }
        if (again.isPresent() && (resume.isPresent() || layouts.isPresent() || !by.isEmpty())) {
            throw new Refusal(
                    "--again tells what was looked for before; leave out --resume, --layouts and"
                            + " --by");
        }
        return new SearchLimits(changes, layouts.orElse(Integer.MAX_VALUE));
    }

    private Explored explored(FoundStudy found, List<CriterionName> criteria, SearchLimits limits) {
        if (resume.isEmpty()) {
            return explored(found, criteria, limits, Optional.empty());
        }
        String fingerprint =
                Integer.toHexString(criteria.toString().hashCode() + changes)
                        + " "
                        + ProgramVersion.words()
                        + " "
                        + found.read().fingerprint();
        try (KeptTrials kept = KeptTrials.of(resume.get(), fingerprint, criteria.size(), context)) {
            Thread saving = new Thread(kept::save, "save");
            Runtime.getRuntime().addShutdownHook(saving);
            try {
                Explored explored = explored(found, criteria, limits, Optional.of(kept));
                kept.save();
                return explored;
            } finally {
                Runtime.getRuntime().removeShutdownHook(saving);
            }
        }
    }

    private Explored explored(
            FoundStudy found,
            List<CriterionName> criteria,
            SearchLimits limits,
            Optional<KeptTrials> kept) {
        Optional<Duration> time =
                layouts.isPresent()
                        ? Optional.empty()
                        : Optional.of(Duration.ofMillis(Math.round(minutes * 60_000)));
        try (Progress progress = Progress.telling(context)) {
            SearchWatch watch = new FollowedSearch(progress, kept, time);
            return Exploration.of(found.reader(), found.read(), criteria, limits, watch);
        } catch (ChangeRefused e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    private String saved(Explored explored, String name, FoundStudy found) {
        if (!explored.drawn().containsKey(name)) {
            throw new Refusal(
                    "--save: no layout "
                            + name
                            + " was found; there are "
                            + String.join(", ", explored.drawn().keySet()));
        }
        try {
            YamlDocument file = explored.file(name);
            Path path = file.file().resolveSibling(name + ".yaml");
            if (Files.exists(path)) {
                throw new Refusal(
                        context.shown(path) + " is there already; rename it, then save again");
            }
            WholeFile.replace(path, file.text().getBytes(StandardCharsets.UTF_8));
            return "Saved: " + context.shown(path) + ", a candidate of " + found.study().id();
        } catch (ChangeRefused e) {
            throw new Refusal("--save: " + e.getMessage());
        } catch (IOException e) {
            throw Refusal.unwritten(name + ".yaml", e, "folder for the study");
        }
    }
}

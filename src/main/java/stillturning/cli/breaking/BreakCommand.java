package stillturning.cli.breaking;

import stillturning.cli.decide.Assessed;
import stillturning.cli.joint.JointText;
import stillturning.cli.joint.ResumedSearch;
import stillturning.cli.joint.Resumption;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Paragraph;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Collectors;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.Appraisal;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.CandidateCases;
import stillturning.assess.Outcome;
import stillturning.assess.WorseInPhase;
import stillturning.assess.ranges.EnduranceRange;
import stillturning.dossier.JointWork;
import stillturning.dossier.NamedFailures;
import stillturning.model.Candidate;
import stillturning.model.Chances;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.CommonCauses;
import stillturning.model.failure.Failure;
import stillturning.report.CaseTexts;
import stillturning.report.ElsewhereTable;
import stillturning.report.OtherFindings;
import stillturning.report.RankingOrder;
import stillturning.report.TerminalTables;
import stillturning.report.joint.SharedFindings;
import stillturning.report.json.JsonReport;
import stillturning.story.Moment;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;

/** Makes things fail and tells what follows. */
@Command(
        name = "break",
        description =
                "Make things fail. With --failure, tell what follows in time; without, show what"
                        + " every failure does to every candidate. Names may be written loosely: a"
                        + " part's name means all its ways to fail, more words narrow it down.",
        footer = {
            "  stillturning break sandpiper",
            "  stillturning break sandpiper --failure \"main bus short\"",
            "  stillturning break sandpiper --candidate split --failure alternator",
            "  stillturning break sandpiper --failure \"charging lost\" --pilot never",
            "  stillturning break sandpiper --candidate split --failure \"main bus short\""
                    + " --plot bus.png",
            "  stillturning break sandpiper --failure \"master off\"",
            "  stillturning break sandpiper --failure \"main bus short\" --failure \"lead fuse does"
                    + " not open\"",
            "  stillturning break sandpiper --failure \"heat in engine\"",
            "  stillturning break sandpiper --failure alternator --in climb",
            "  stillturning break sandpiper --failure \"charging lost\" --every-phase",
            "  stillturning break sandpiper --cases",
            "  stillturning break sandpiper --pairs --candidate split --resume pairs.json",
            "  stillturning break sandpiper --causes",
            "  stillturning break sandpiper --latent",
            "  stillturning break sandpiper --candidate split --failure \"charging lost\" --ranges"
        })
public final class BreakCommand implements Callable<Integer> {

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, by its name or title.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--failure",
            paramLabel = "WORDS",
            description =
                    "A part, a part and how it fails, \"charging lost\", \"master off\", or what"
                            + " takes several parts (\"heat in engine\"). Given twice or more: all"
                            + " of them at once.")
    private List<String> failures = List.of();

    @Option(
            names = "--pilot",
            paramLabel = "planned|late|never",
            description =
                    "With --failure: the pilot keeps to the procedures (planned, if not given),"
                            + " takes three times as long (late), or does nothing (never)."
                            + " --json tells of all three.")
    private Optional<Pilot> pilot = Optional.empty();

    @Mixin private RangeOptions ranges = new RangeOptions();
    @Mixin private JointOptions joint = new JointOptions();

    @Option(
            names = "--plot",
            paramLabel = "FILE.svg|FILE.png",
            description =
                    "With --failure: draw the story into this file, replacing it; several stories"
                            + " into FILE-1, FILE-2 and so on. The numbers in the picture are those"
                            + " of the events as printed.")
    private Optional<String> plot = Optional.empty();

    @Option(
            names = "--in",
            paramLabel = "PHASE",
            description =
                    "With --failure: let it come as this phase of the flight begins, and fly the"
                            + " rest of the flight.")
    private Optional<String> phase = Optional.empty();

    @Option(
            names = "--every-phase",
            description =
                    "With --failure: let it come at every moment of the flight, as a table. Without:"
                            + " every failure that does worse elsewhere in the flight.")
    private boolean everyPhase;

    @Option(
            names = "--cases",
            description =
                    "Only the cases that the study names, for each candidate: what they do, how"
                            + " long the engine runs with each kind of pilot, by when he must act.")
    private boolean cases;

    @Option(
            names = "--all",
            description =
                    "Without --failure: list also what else is only counted, such as failures that"
                            + " leave the engine running.")
    private boolean all;

    public BreakCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        refuseWhatContradicts();
        FoundStudy source = FoundStudy.sound(asked.study, context);
        Study study = source.only(candidate);
        if (joint.any()) {
            together(source, study);
        } else if (cases) {
            cases(study);
        } else if (asksForStories()) {
            tell(source, study);
        } else if (everyPhase) {
            elsewhere(study);
        } else {
            matrix(study);
        }
        return ExitCode.FINE;
    }

    private void refuseWhatContradicts() {
        joint.refuseWhatContradicts();
        if (joint.any() && (asksForStories() || cases || everyPhase)) {
            throw new Refusal(
                    "--pairs, --latent and --causes look at all failures; leave --failure, --cases"
                            + " and --every-phase out");
        }
        if (cases && (asksForStories() || all)) {
            throw new Refusal("--cases tells the study's own cases; leave --failure and --all out");
        }
        needsFailure("--pilot", pilot.isPresent());
        needsFailure("--plot", plot.isPresent());
        needsFailure("--in", phase.isPresent());
        needsFailure("--ranges", ranges.asked());
        if (all && asksForStories()) {
            throw new Refusal("--all lists every failure; leave --failure or --all out");
        }
        if (everyPhase && cases) {
            throw new Refusal(
                    "without --failure, --every-phase is a list of every failure that does worse"
                            + " elsewhere; leave --cases out");
        }
        if (ranges.asked() && (everyPhase || phase.isPresent() || pilot.isPresent())) {
            throw new Refusal(
                    "--ranges is about the study's own phase with a pilot as planned; leave"
                            + " --every-phase, --in and --pilot out");
        }
        if (everyPhase && (phase.isPresent() || plot.isPresent() || pilot.isPresent())) {
            throw new Refusal(
                    "--every-phase is a table over all phases and pilots; leave --in, --pilot and"
                            + " --plot out");
        }
    }

    private void needsFailure(String option, boolean given) {
        if (given && failures.isEmpty()) {
            throw new Refusal(option + " needs --failure");
        }
    }

    private boolean asksForStories() {
        return !failures.isEmpty();
    }

    private void together(FoundStudy source, Study study) {
        Chances chances = source.read().chances();
        Output out = new Output(context);
        if (joint.causes()) {
            List<SharedFindings> shared = ResumedSearch.shared(study, chances, context);
            if (asked.json) {
                out.raw(JsonReport.causes(study, shared));
            } else {
                JointText.causes(study, shared, all, out);
            }
            return;
        }
        Optional<Resumption> kept = joint.kept(source, context);
        JointWork work = ResumedSearch.of(study, chances, joint.order(), kept, context);
        if (asked.json) {
            out.raw(
                    joint.pairs()
                            ? JsonReport.pairs(study, work.found(), work.reasons())
                            : JsonReport.latent(study, work.found(), work.reasons()));
        } else if (joint.pairs()) {
            new JointText(study, work, out).pairs(all);
        } else {
            new JointText(study, work, out).latent(all);
        }
    }

    private void matrix(Study study) {
        Assessed assessed = Assessed.of(study, context);
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.matrix(assessed.assessment()));
            return;
        }
        assessed.heading(out);
        Outcome mildest = all ? Outcome.NO_EFFECT : Outcome.INTERRUPTED;
        out.section("What every failure does, the pilot as planned")
                .lines(TerminalTables.matrix(assessed.assessment(), mildest, out.paint()));
        beside(assessed.assessment(), out);
        out.caution();
    }

    private void beside(Assessment assessment, Output out) {
        List<Appraisal> appraisals = RankingOrder.of(assessment);
        List<String> left = OtherFindings.leftSwitches(appraisals, all, out.paint());
        if (!left.isEmpty()) {
            out.section("One switch left wrong before flight").lines(left);
        }
        List<String> starts = OtherFindings.starts(appraisals, out.paint());
        if (!starts.isEmpty()) {
            out.section("Starting the engine on the ground").lines(starts);
        }
    }

    private List<WorseInPhase> elsewhere(Assessment assessment) {
        int moments = Assess.moments(assessment.study()).size() * assessment.appraisals().size();
        try (Progress progress = Progress.over(moments, "moments tried", context)) {
            return Assess.elsewhere(assessment, progress);
        } catch (UntoldStory e) {
            throw new Refusal("not every moment can be computed: " + e.getMessage());
        }
    }

    private void elsewhere(Study study) {
        Assessed assessed = Assessed.of(study, context);
        List<WorseInPhase> worse = elsewhere(assessed.assessment());
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.elsewhere(study, worse));
            return;
        }
        ElsewhereTable table = new ElsewhereTable(assessed.assessment(), worse);
        assessed.heading(out);
        out.section("At every moment of the flight")
                .line(Paragraph.of("", table.method()))
                .line("")
                .lines(table.lines(all ? Outcome.NO_EFFECT : Outcome.INTERRUPTED, out.paint()))
                .caution();
    }

    private void cases(Study study) {
        if (study.goals().cases().isEmpty()) {
            throw new Refusal(
                    "the study names no cases; write them into its study.yaml, such as"
                            + " cases: [charging lost, main bus short]");
        }
        List<CandidateCases> told = new ArrayList<>();
        try (Progress progress =
                Progress.over(study.candidates().size(), "candidates told", context)) {
            for (Candidate candidate : study.candidates()) {
                told.add(Assess.cases(study, candidate, NamedFailures.cases(study, candidate)));
                progress.accept(candidate.id());
            }
        }
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.cases(study, told));
        } else {
            tell(told, out);
        }
    }

    private static void tell(List<CandidateCases> told, Output out) {
        told.forEach(
                of -> out.section(of.candidate().title()).lines(CaseTexts.table(of, out.paint())));
        out.section("What each case means");
        CaseTexts.meanings(told).forEach(line -> out.line(Paragraph.of("  ", line)));
        out.caution();
    }

    private void tell(FoundStudy source, Study study) {
        Optional<PlotFiles> files = plot.map(written -> PlotFiles.named(written, context));
        FailureNames names = new FailureNames(study.candidates(), causes(source, study));
        Map<String, List<Failure>> found = AtOnce.of(failures.stream().map(names::find).toList());
        if (everyPhase) {
            everyPhase(study, found);
            return;
        }
        Moment moment =
                phase.map(named -> PhaseNames.find(study, named))
                        .orElse(Moment.heldIn(study.goals().failurePhase().name()));
        Stories stories = Stories.of(study, found, moment, pilot.orElse(Pilot.PLANNED), context);
        List<EnduranceRange> sure =
                ranges.asked()
                        ? stories.told().stream()
                                .map(
                                        t ->
                                                ranges.of(
                                                        source.reader(),
                                                        t.candidate(),
                                                        t.verdict(),
                                                        context))
                                .toList()
                        : List.of();
        List<String> drawn = files.map(f -> f.write(stories)).orElse(List.of());
        Output out = new Output(context);
        if (asked.json) {
            out.raw(StoriesJson.of(stories, sure));
        } else {
            new StoriesText(stories, sure, out).tell(drawn);
        }
    }

    private static Map<String, List<Failure>> causes(FoundStudy source, Study study) {
        return study.candidates().stream()
                .collect(
                        Collectors.toMap(
                                Candidate::id,
                                candidate ->
                                        CommonCauses.of(
                                                        study.aircraft(),
                                                        candidate,
                                                        source.read().chances())
                                                .stream()
                                                .map(Cause::failure)
                                                .toList()));
    }

    private void everyPhase(Study study, Map<String, List<Failure>> failures) {
        PhaseAnswers phases = PhaseAnswers.of(study, failures, context);
        Output out = new Output(context);
        if (asked.json) {
            out.raw(JsonReport.phases(study, phases.told(), phases.untold()));
        } else {
            phases.tell(out);
        }
    }
}

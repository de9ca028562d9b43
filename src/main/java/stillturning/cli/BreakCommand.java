package stillturning.cli;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.Outcome;
import stillturning.failure.Failure;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.ranges.EnduranceRange;
import stillturning.report.TerminalTables;
import stillturning.report.json.JsonReport;
import stillturning.story.Pilot;

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
            "  stillturning break sandpiper --failure \"master off\"",
            "  stillturning break sandpiper --candidate split --failure \"charging lost\" --ranges"
        })
final class BreakCommand implements Callable<Integer> {

    private final Surroundings around;
    @Mixin private StudyArgument asked = new StudyArgument();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "Only this candidate, by its name or title.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--failure",
            paramLabel = "WORDS",
            description = "A part, a part and how it fails, \"charging lost\" or \"master off\".")
    private Optional<String> failure = Optional.empty();

    @Option(
            names = "--pilot",
            paramLabel = "planned|late|never",
            description =
                    "With --failure: the pilot keeps to the procedures (planned, if not given),"
                            + " takes three times as long (late), or does nothing (never).")
    private Optional<Pilot> pilot = Optional.empty();

    @Mixin private RangeOptions ranges = new RangeOptions();

    @Option(
            names = "--all",
            description = "Without --failure: list also failures that leave the engine running.")
    private boolean all;

    BreakCommand(Surroundings around) {
        this.around = around;
    }

    @Override
    public Integer call() {
        FoundStudy found = FoundStudy.sound(asked.study, around);
        Study whole = found.study();
        if (ranges.asked() && (candidate.isEmpty() || failure.isEmpty() || pilot.isPresent())) {
            throw new Refusal(
                    "--ranges needs --candidate and --failure, and tells of the pilot as planned");
        }
        Study study = candidate.map(c -> only(whole, CandidateNames.find(whole, c))).orElse(whole);
        if (failure.isPresent()) {
            tell(found, study, failure.get());
        } else {
            matrix(study);
        }
        return ExitCode.FINE;
    }

    private static Study only(Study study, Candidate candidate) {
        return new Study(
                study.id(), study.heading(), study.aircraft(), study.goals(), List.of(candidate));
    }

    private void matrix(Study study) {
        if (pilot.isPresent()) {
            throw new Refusal("--pilot needs --failure");
        }
        Assessed assessed = Assessed.of(study, around);
        Output out = new Output(around);
        if (asked.json) {
            out.raw(JsonReport.matrix(assessed.assessment()));
            return;
        }
        assessed.heading(out);
        Outcome mildest = all ? Outcome.NO_EFFECT : Outcome.INTERRUPTED;
        out.section("What every failure does, the pilot as planned")
                .lines(TerminalTables.matrix(assessed.assessment(), mildest, out.paint()))
                .caution();
    }

    private void tell(FoundStudy source, Study study, String said) {
        if (asked.json && pilot.isPresent()) {
            throw new Refusal(
                    "--json tells both of the pilot as planned and of one who does nothing;"
                            + " leave --pilot out");
        }
        Map<String, List<Failure>> found = new FailureNames(study.candidates()).find(said);
        Stories stories = Stories.of(study, found, pilot.orElse(Pilot.PLANNED), around);
        List<EnduranceRange> sure =
                ranges.asked()
                        ? stories.told().stream()
                                .map(
                                        t ->
                                                ranges.of(
                                                        source.reader(),
                                                        t.candidate(),
                                                        t.verdict(),
                                                        around))
                                .toList()
                        : List.of();
        Output out = new Output(around);
        if (asked.json) {
            out.raw(StoriesJson.of(stories, sure));
        } else {
            new StoriesText(stories, sure, out).tell();
        }
    }
}

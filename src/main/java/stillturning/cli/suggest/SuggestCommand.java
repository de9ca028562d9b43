package stillturning.cli.suggest;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.Wanted;
import stillturning.cli.study.CandidateNames;
import stillturning.cli.study.FoundStudy;
import stillturning.cli.study.StudyArgument;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.CommandContext;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Output;
import stillturning.cli.terminal.Progress;
import stillturning.cli.terminal.Refusal;
import stillturning.dossier.suggest.Aim;
import stillturning.dossier.suggest.LightestChanges;
import stillturning.dossier.suggest.Suggest;
import stillturning.dossier.suggest.Suggested;
import stillturning.files.edit.ChangeRefused;
import stillturning.files.move.Drawn;
import stillturning.model.Candidate;
import stillturning.story.UntoldStory;

/** Looks for small changes that would mend a candidate. */
@Command(
        name = "suggest",
        description =
                "Look for small changes of one candidate that mend what is wrong with it: a second"
                        + " path, a bus split, a battery less. Each is assessed in full, and what it"
                        + " breaks stands beside what it mends. Takes minutes.",
        footer = {
            "  stillturning suggest sandpiper --candidate one-battery-engine-bus",
            "  stillturning suggest sandpiper --candidate one-battery-engine-bus"
                    + " --failure \"battery minus\"",
            "  stillturning suggest sandpiper --candidate one-battery-engine-bus"
                    + " --finding \"gear pump breaker\"",
            "  stillturning suggest sandpiper --candidate two-alternators --requirement weighs",
            "  stillturning suggest sandpiper --candidate one-battery-engine-bus --save 1",
            "  stillturning suggest sandpiper --lightest --keep mends.json"
        })
public final class SuggestCommand implements Callable<Integer> {

    private static final int MOST_MOVES = 3;

    private final CommandContext context;
    @Mixin private StudyArgument asked = new StudyArgument();
    @Mixin private LightestOptions lightest = new LightestOptions();

    @Option(
            names = "--candidate",
            paramLabel = "NAME",
            description = "The candidate, by its name or title; only --lightest does without.")
    private Optional<String> candidate = Optional.empty();

    @Option(
            names = "--failure",
            paramLabel = "WORDS",
            description =
                    "Mend what this failure does. Given twice: a failure that nobody sees, and one"
                            + " more that then ends the engine, or an event that takes several"
                            + " parts. Without: every single failure that"
                            + " loses the engine, or else the requirements that are missed.")
    private List<String> failures = List.of();

    @Option(
            names = "--finding",
            paramLabel = "WORDS",
            description =
                    "Mend what is found before anything fails: what gives way with nothing wrong, a"
                            + " switch that nobody sees left wrong, a size.")
    private Optional<String> finding = Optional.empty();

    @Option(
            names = "--requirement",
            paramLabel = "WORDS",
            description = "Meet this requirement of the study.")
    private Optional<String> requirement = Optional.empty();

    @Option(
            names = "--moves",
            paramLabel = "1|2|3",
            description = "Most moves one after the other; 2 if not given.")
    private int moves = LightestChanges.USUAL.steps();

    @Option(
            names = "--most",
            paramLabel = "N",
            description = "Look at no more than so many drawings; 240 if not given.")
    private int most = LightestChanges.USUAL.trials();

    @Option(
            names = "--minutes",
            paramLabel = "N",
            description =
                    "End after so many minutes with what is found by then, which hangs on the"
                            + " machine; no end by the clock if not given.")
    private Optional<Integer> minutes = Optional.empty();

    @Option(
            names = "--save",
            paramLabel = "N",
            description =
                    "Save the suggestion of this number as a new candidate beside the others.")
    private Optional<Integer> save = Optional.empty();

    @Option(
            names = "--all",
            description =
                    "List last what mends something but brings more new single failures that lose"
                            + " the engine than it takes away; else these are only counted.")
    private boolean all;

    public SuggestCommand(CommandContext context) {
        this.context = context;
    }

    @Override
    public Integer call() {
        if (moves < 1 || moves > MOST_MOVES || most < 1 || minutes.orElse(1) < 1) {
            throw new Refusal(
                    "--moves takes 1, 2 or 3, --most and --minutes at least 1; given were "
                            + moves
                            + ", "
                            + most
                            + minutes.map(m -> " and " + m).orElse(""));
        }
        long targets =
                Stream.of(!failures.isEmpty(), finding.isPresent(), requirement.isPresent())
                        .filter(given -> given)
                        .count();
        if (targets > 1 || failures.size() > 2) {
            throw new Refusal(
                    "take one of --failure, --finding and --requirement; --failure twice at most");
        }
        if (lightest.asked() ? targets > 0 || save.isPresent() : candidate.isEmpty()) {
            throw new Refusal(
                    lightest.asked()
                            ? "--lightest asks about all that is wrong; leave out --failure,"
                                    + " --finding, --requirement and --save"
                            : "name one candidate with --candidate, or ask about all that is wrong"
                                    + " with --lightest");
        }
        lightest.claim(context);
        FoundStudy found = asked.sound(context);
        new Output(context).answer(answer(found), asked.json());
        return ExitCode.FINE;
    }

    private Answer answer(FoundStudy found) {
        if (lightest.asked()) {
            FoundStudy asked = found.only(candidate);
            SearchLimits limits = new SearchLimits(moves, most);
            LightestAnswer answer = lightest.answer(asked, limits, minutes, context);
            return all ? answer.withOutweighed() : answer;
        }
        Candidate of = CandidateNames.find(found.study(), candidate.orElse(""));
        Suggested looked = suggested(found, of);
        Suggested suggested = all ? looked.withOutweighed() : looked;
        return new Answered(suggested, saved(suggested));
    }

    private Suggested suggested(FoundStudy found, Candidate of) {
        try {
            Suggest suggest = Suggest.of(Drawn.of(found.reader(), found.read(), of.id()));
            Optional<Aim> aim = AimWords.aim(suggest, failures, finding);
            Wanted wanted =
                    aim.map(a -> Wanted.other(a.words()))
                            .orElseGet(
                                    () ->
                                            WantedWords.wanted(
                                                    suggest.before(),
                                                    failures.stream().findFirst(),
                                                    requirement));
            if (wanted.isNothing()) {
                return suggest.mending(wanted, new SearchLimits(0, 1), SearchWatch.NOBODY);
            }
            try (Progress progress = Progress.over(most, "drawings looked at", context)) {
                SearchLimits limits = new SearchLimits(moves, most);
                SearchWatch watch =
                        new Clock(
                                minutes,
                                done ->
                                        progress.tell(
                                                done.tried()
                                                        + " of "
                                                        + most
                                                        + " drawings looked at"));
                return aim.isPresent()
                        ? suggest.mending(aim.get(), limits, watch)
                        : suggest.mending(wanted, limits, watch);
            }
        } catch (ChangeRefused e) {
            throw new Refusal(e.why());
        } catch (UntoldStory e) {
            throw new Refusal(String.valueOf(e.getMessage()));
        }
    }

    private Optional<String> saved(Suggested suggested) {
        if (save.isEmpty()) {
            return Optional.empty();
        }
        int listed = suggested.suggestions().found().size();
        int number = save.get();
        if (number < 1 || number > listed) {
            throw new Refusal(
                    listed == 0
                            ? "nothing is listed that could be saved"
                            : "--save takes a number from 1 to " + listed);
        }
        return Optional.of(context.shown(NewCandidateFile.written(suggested, number - 1)));
    }
}

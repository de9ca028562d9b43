package stillturning.cli.breaking;

import static stillturning.cli.breaking.BreakOption.ALL;
import static stillturning.cli.breaking.BreakOption.CASES;
import static stillturning.cli.breaking.BreakOption.CAUSES;
import static stillturning.cli.breaking.BreakOption.EVERY_PHASE;
import static stillturning.cli.breaking.BreakOption.FAILURE;
import static stillturning.cli.breaking.BreakOption.IN;
import static stillturning.cli.breaking.BreakOption.LATENT;
import static stillturning.cli.breaking.BreakOption.ORDER;
import static stillturning.cli.breaking.BreakOption.PAIRS;
import static stillturning.cli.breaking.BreakOption.PILOT;
import static stillturning.cli.breaking.BreakOption.PLOT;
import static stillturning.cli.breaking.BreakOption.RANGES;
import static stillturning.cli.breaking.BreakOption.RESUME;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import stillturning.cli.terminal.Answer;
import stillturning.cli.terminal.Refusal;

/** The questions about failures: the options that ask each, those that belong to it, its class. */
@SuppressWarnings("ImmutableEnumChecker") // sets made by Set.of, functions that hold nothing
enum BreakQuestion {
    WHAT_EVERY_FAILURE_DOES(Set.of(), Set.of(ALL), MatrixAnswer::of),
    WHAT_DOES_WORSE_ELSEWHERE(Set.of(EVERY_PHASE), Set.of(ALL), WorseElsewhere::of),
    WHAT_THE_CASES_DO(Set.of(CASES), Set.of(), CaseAnswers::of),
    WHAT_FOLLOWS(Set.of(FAILURE), Set.of(PILOT, IN, PLOT), StoryAnswers::of),
    HOW_SURE_THAT_IS(Set.of(FAILURE, RANGES), Set.of(PLOT), RangeAnswers::of),
    WHAT_FOLLOWS_IN_EVERY_PHASE(Set.of(FAILURE, EVERY_PHASE), Set.of(), PhaseAnswers::of),
    WHICH_SETS_END_THE_ENGINE(Set.of(PAIRS), Set.of(ORDER, RESUME, ALL), PairAnswers::of),
    WHAT_NOBODY_SEES(Set.of(LATENT), Set.of(RESUME, ALL), LatentAnswers::of),
    WHAT_FAILS_TOGETHER(Set.of(CAUSES), Set.of(ALL), CauseAnswers::of);

    private static final Set<BreakOption> JOINT = Set.of(PAIRS, LATENT, CAUSES);

    /** What no question takes; the first that is broken is told. */
    private static final List<Rule> RULES =
            List.of(
                    new Rule(
                            given -> given.stream().filter(JOINT::contains).count() > 1,
                            "--pairs, --latent and --causes are three questions; ask one"),
                    Rule.needs(ORDER, PAIRS),
                    Rule.needs(RESUME, PAIRS, LATENT),
                    Rule.apart(
                            JOINT,
                            Set.of(FAILURE, CASES, EVERY_PHASE),
                            "--pairs, --latent and --causes look at all failures; leave --failure,"
                                    + " --cases and --every-phase out"),
                    Rule.apart(
                            Set.of(CASES),
                            Set.of(FAILURE, ALL),
                            "--cases tells the study's own cases; leave --failure and --all out"),
                    Rule.needs(PILOT, FAILURE),
                    Rule.needs(PLOT, FAILURE),
                    Rule.needs(IN, FAILURE),
                    Rule.needs(RANGES, FAILURE),
                    Rule.apart(
                            Set.of(ALL),
                            Set.of(FAILURE),
                            "--all lists every failure; leave --failure or --all out"),
                    Rule.apart(
                            Set.of(EVERY_PHASE),
                            Set.of(CASES),
                            "without --failure, --every-phase is a list of every failure that does"
                                    + " worse elsewhere; leave --cases out"),
                    Rule.apart(
                            Set.of(RANGES),
                            Set.of(EVERY_PHASE, IN, PILOT),
                            "--ranges is about the study's own phase with a pilot as planned; leave"
                                    + " --every-phase, --in and --pilot out"),
                    Rule.apart(
                            Set.of(EVERY_PHASE),
                            Set.of(IN, PLOT, PILOT),
                            "--every-phase is a table over all phases and pilots; leave --in,"
                                    + " --pilot and --plot out"));

    /**
     * Options that do not go together.
     *
     * @param right what would be right
     */
    private record Rule(Predicate<Set<BreakOption>> broken, String right) {

        /** An option that says something only together with one of some others. */
        static Rule needs(BreakOption option, BreakOption... others) {
            return new Rule(
                    given -> given.contains(option) && Collections.disjoint(given, List.of(others)),
                    option.written()
                            + " needs "
                            + Arrays.stream(others)
                                    .map(BreakOption::written)
                                    .collect(Collectors.joining(" or ")));
        }

        static Rule apart(Set<BreakOption> some, Set<BreakOption> others, String right) {
            return new Rule(
                    given ->
                            !Collections.disjoint(given, some)
                                    && !Collections.disjoint(given, others),
                    right);
        }
    }

    private final Set<BreakOption> asking;
    private final Set<BreakOption> belonging;
    private final Function<BreakRequest, Answer> answering;

    BreakQuestion(
            Set<BreakOption> asking,
            Set<BreakOption> belonging,
            Function<BreakRequest, Answer> answering) {
        this.asking = asking;
        this.belonging = belonging;
        this.answering = answering;
    }

    /**
     * The question that the options ask.
     *
     * @throws Refusal if there is none
     */
    static BreakQuestion of(BreakOptions options) {
        BreakQuestion question = of(BreakOption.given(options));
        options.refuseOtherSets();
        return question;
    }

    /**
     * The question that just these options ask.
     *
     * @throws Refusal if there is none
     */
    static BreakQuestion of(Set<BreakOption> given) {
        RULES.stream()
                .filter(rule -> rule.broken.test(given))
                .findFirst()
                .ifPresent(
                        rule -> {
                            throw new Refusal(rule.right);
                        });
        return Arrays.stream(values())
                .filter(question -> question.takes(given))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no question takes " + given));
    }

    /** Whether these options ask this, and all belong to it. */
    boolean takes(Set<BreakOption> given) {
        return given.containsAll(asking)
                && given.stream().allMatch(o -> asking.contains(o) || belonging.contains(o));
    }

    Answer answer(BreakRequest request) {
        return answering.apply(request);
    }
}

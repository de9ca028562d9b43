package stillturning.cli.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import picocli.CommandLine;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.cli.terminal.Refusal;

/** Which question the options of break ask, and which of them ask none. */
class BreakQuestionTest {

    private static final String LOOK_AT_ALL =
            "--pairs, --latent and --causes look at all failures; leave --failure, --cases and"
                    + " --every-phase out";

    /** Each of some options with each of others, where what they need is given too. */
    record Apart(String some, String others, String refusal) {

        Stream<Set<BreakOption>> pairs() {
            return options(some).flatMap(one -> options(others).map(o -> EnumSet.of(one, o)));
        }
    }

    static List<Apart> apart() {
        return List.of(
                new Apart(
                        "--failure --pilot --in --plot --ranges --every-phase --cases",
                        "--pairs --latent --causes --order --resume",
                        LOOK_AT_ALL),
                new Apart(
                        "--failure --pilot --in --plot --ranges --all",
                        "--cases",
                        "--cases tells the study's own cases; leave --failure and --all out"),
                new Apart(
                        "--failure --pilot --in --plot --ranges",
                        "--all",
                        "--all lists every failure; leave --failure or --all out"),
                new Apart(
                        "--pilot --in --every-phase",
                        "--ranges",
                        "--ranges is about the study's own phase with a pilot as planned; leave"
                                + " --every-phase, --in and --pilot out"),
                new Apart(
                        "--pilot --in --plot",
                        "--every-phase",
                        "--every-phase is a table over all phases and pilots; leave --in, --pilot"
                                + " and --plot out"),
                new Apart(
                        "--every-phase",
                        "--cases",
                        "without --failure, --every-phase is a list of every failure that does"
                                + " worse elsewhere; leave --cases out"),
                new Apart(
                        "--latent",
                        "--pairs --causes --order",
                        "--pairs, --latent and --causes are three questions; ask one"),
                new Apart(
                        "--causes",
                        "--pairs --order --resume",
                        "--pairs, --latent and --causes are three questions; ask one"));
    }

    @TempDir private Path here;

    /** Of a study that is not there, so the options are looked at before anything is read. */
    private Ran breaking(Set<BreakOption> options) {
        List<String> words = new ArrayList<>(List.of("break", "nowhere"));
        options.forEach(option -> words.addAll(words(option)));
        return Session.in(here).run(words.toArray(new String[0]));
    }

    private static List<String> words(BreakOption option) {
        String written = option.written();
        return switch (option) {
            case FAILURE -> List.of(written, "main bus");
            case PILOT -> List.of(written, "never");
            case IN -> List.of(written, "cruise");
            case PLOT -> List.of(written, "plot.svg");
            case ORDER -> List.of(written, "1");
            case RESUME -> List.of(written, "kept.json");
            case RANGES, EVERY_PHASE, CASES, ALL, PAIRS, LATENT, CAUSES -> List.of(written);
        };
    }

    private static Stream<BreakOption> options(String written) {
        List<String> names = List.of(written.split(" ", -1));
        return Arrays.stream(BreakOption.values()).filter(o -> names.contains(o.written()));
    }

    /** With what each of them cannot be without. */
    private static Set<BreakOption> whole(Set<BreakOption> options) {
        Set<BreakOption> whole = EnumSet.copyOf(options);
        for (BreakOption option : options) {
            switch (option) {
                case PILOT, IN, PLOT, RANGES -> whole.add(BreakOption.FAILURE);
                case ORDER, RESUME -> whole.add(BreakOption.PAIRS);
                case FAILURE, EVERY_PHASE, CASES, ALL, PAIRS, LATENT, CAUSES -> {}
            }
        }
        return whole;
    }

    private static boolean isTaken(Set<BreakOption> options) {
        return Arrays.stream(BreakQuestion.values()).anyMatch(q -> q.takes(options));
    }

    private static List<Set<BreakOption>> everySet() {
        List<Set<BreakOption>> sets = List.of(EnumSet.noneOf(BreakOption.class));
        for (BreakOption option : BreakOption.values()) {
            List<Set<BreakOption>> more = new ArrayList<>(sets);
            for (Set<BreakOption> set : sets) {
                Set<BreakOption> larger = EnumSet.of(option);
                larger.addAll(set);
                more.add(larger);
            }
            sets = more;
        }
        return sets;
    }

    @ParameterizedTest
    @EnumSource(BreakOption.class)
    void anOptionIsKnownByItsWord(BreakOption option) {
        BreakOptions asked = new BreakOptions();
        new CommandLine(asked)
                .setCaseInsensitiveEnumValuesAllowed(true)
                .parseArgs(words(option).toArray(new String[0]));
        assertEquals(Set.of(option), BreakOption.given(asked));
    }

    @ParameterizedTest
    @MethodSource("apart")
    void optionsThatDoNotBelongTogetherAreRefusedWithWhatWouldBeRight(Apart apart) {
        apart.pairs()
                .map(BreakQuestionTest::whole)
                .forEach(
                        options -> {
                            Ran ran = breaking(options);
                            assertEquals(ExitCode.BAD_INPUT, ran.code(), options.toString());
                            assertEquals(
                                    "stillturning: " + apart.refusal,
                                    ran.err().strip(),
                                    () -> "" + options);
                            assertEquals("", ran.out());
                        });
    }

    @Test
    void everyPairThatNoQuestionTakesIsAmongThose() {
        Set<String> refused = new TreeSet<>();
        apart().stream().flatMap(Apart::pairs).forEach(pair -> refused.add(pair.toString()));
        Set<String> untaken = new TreeSet<>();
        List<Set<BreakOption>> taken =
                everySet().stream().filter(BreakQuestionTest::isTaken).toList();
        for (Set<BreakOption> pair : everySet()) {
            if (pair.size() == 2 && taken.stream().noneMatch(set -> set.containsAll(pair))) {
                untaken.add(pair.toString());
            }
        }
        assertEquals(untaken, refused);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "PILOT | --pilot needs --failure",
                "IN | --in needs --failure",
                "PLOT | --plot needs --failure",
                "RANGES | --ranges needs --failure",
                "ORDER | --order needs --pairs",
                "RESUME | --resume needs --pairs or --latent"
            })
    void anOptionWithoutWhatItNeedsIsRefused(BreakOption option, String refusal) {
        Ran ran = breaking(Set.of(option));
        assertEquals(ExitCode.BAD_INPUT, ran.code());
        assertEquals("stillturning: " + refusal, ran.err().strip());
    }

    @Test
    void whateverNoQuestionTakesIsRefusedAndTheRestIsOneQuestion() {
        for (Set<BreakOption> options : everySet()) {
            List<BreakQuestion> taking =
                    Arrays.stream(BreakQuestion.values()).filter(q -> q.takes(options)).toList();
            if (taking.isEmpty()) {
                Refusal refusal = assertThrows(Refusal.class, () -> BreakQuestion.of(options));
                assertTrue(
                        options.stream().anyMatch(o -> refusal.getMessage().contains(o.written())),
                        () -> options + ": " + refusal.getMessage());
            } else {
                assertEquals(List.of(BreakQuestion.of(options)), taking, options.toString());
            }
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "'' | WHAT_EVERY_FAILURE_DOES",
                "--all | WHAT_EVERY_FAILURE_DOES",
                "--every-phase --all | WHAT_DOES_WORSE_ELSEWHERE",
                "--cases | WHAT_THE_CASES_DO",
                "--failure --pilot --in --plot | WHAT_FOLLOWS",
                "--failure --ranges --plot | HOW_SURE_THAT_IS",
                "--failure --every-phase | WHAT_FOLLOWS_IN_EVERY_PHASE",
                "--pairs --order --resume --all | WHICH_SETS_END_THE_ENGINE",
                "--latent --resume --all | WHAT_NOBODY_SEES",
                "--causes --all | WHAT_FAILS_TOGETHER"
            })
    void theOptionsOfAQuestionAskIt(String written, BreakQuestion question) {
        Set<BreakOption> given = EnumSet.noneOf(BreakOption.class);
        options(written).forEach(given::add);
        assertEquals(question, BreakQuestion.of(given));
    }
}

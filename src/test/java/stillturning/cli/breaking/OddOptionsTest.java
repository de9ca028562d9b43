package stillturning.cli.breaking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** Options of break that contradict each other or say nothing: one clear refusal each. */
class OddOptionsTest {

    @TempDir private Path here;

    private Ran breaking(String options) {
        List<String> words = new ArrayList<>(List.of("break", "small"));
        words.addAll(List.of(options.split("/", -1)));
        Session session = Session.in(here);
        session.copyOfFirstSteps("small");
        return session.run(words.toArray(new String[0]));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--ranges | --ranges needs --failure",
                "--ranges/--candidate/one-bus | --ranges needs --failure",
                "--ranges/--cases | --ranges needs --failure",
                "--ranges/--failure/main bus/--in/cruise | leave --every-phase, --in and --pilot",
                "--ranges/--failure/main bus/--pilot/never | leave --every-phase, --in and --pilot",
                "--ranges/--failure/main bus/--every-phase | leave --every-phase, --in and --pilot",
                "--cases | the study names no cases",
                "--cases/--json | the study names no cases",
                "--cases/--pilot/never | --pilot needs --failure",
                "--cases/--plot/x.svg | --plot needs --failure",
                "--cases/--in/cruise | --in needs --failure",
                "--cases/--every-phase | leave --cases out",
                "--cases/--all | leave --failure and --all out",
                "--cases/--failure/main bus | leave --failure and --all out",
                "--all/--failure/main bus | leave --failure or --all out",
                "--in/cruise | --in needs --failure",
                "--in | Missing required parameter for option '--in'",
                "--failure/main bus/--in/ | is called \"\"; write one of cruise",
                "--failure/main bus/--in/swim | is called \"swim\"; write one of cruise",
                "--failure/main bus/--in/cruise/--in/cruise | should be specified only once",
                "--failure/main bus/--every-phase/--in/cruise | leave --in, --pilot and --plot out",
                "--failure/main bus/--every-phase/--pilot/never | leave --in, --pilot and --plot",
                "--failure/main bus/--every-phase/--plot/x.svg | leave --in, --pilot and --plot",
                "--every-phase/--plot/x.svg | --plot needs --failure",
                "--plot | Missing required parameter for option '--plot'",
                "--failure/main bus/--plot/ | ends in .svg or .png, not \"\"",
                "--failure/main bus/--plot/.svg | has no name before its ending",
                "--failure/main bus/--plot/small/.png | Unmatched argument",
                "--failure/main bus/--plot/small | ends in .svg or .png, not \"small\"",
                "--failure/main bus/--pilot/sleepy | was 'sleepy'",
                "--failure/ | nothing here fails by the name \"\"",
                "--candidate/ | there is no candidate \"\"",
                "--candidate/nobody | there is no candidate \"nobody\"",
                "--nonsense | Unknown option: '--nonsense'"
            })
    void eachIsRefusedOnceAndNothingIsDone(String options, String refusal) throws Exception {
        Ran ran = breaking(options);
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertEquals("", ran.out());
        assertTrue(ran.err().contains(refusal), ran.err());
        assertEquals(1, ran.err().split("stillturning: ", -1).length - 1, ran.err());
        try (Stream<Path> files = Files.list(here)) {
            assertEquals(1, files.count());
        }
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--failure/charging lost/--in/cruise/--pilot/late | as cruise begins",
                "--failure/charging lost/--in/cruise/--plot/x.svg | Drawn: ",
                "--failure/charging lost/--in/cruise/--plot/x.svg/--json | \"flown\"",
                "--failure/charging lost/--every-phase/--json | \"moments\"",
                "--every-phase/--all/--candidate/one-bus | At every moment of the flight",
                "--every-phase/--json/--candidate/one-bus | \"triedInPhase\""
            })
    void whatGoesTogetherIsDone(String options, String told) {
        Ran ran = breaking(options);
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains(told), ran.out());
    }
}

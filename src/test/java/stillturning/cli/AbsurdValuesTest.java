package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/** Values that nobody would mean and that are allowed: every story is told to its end. */
@Timeout(120)
class AbsurdValuesTest {

    @TempDir private Path here;

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "study | draws: 4 A (guess), shed: 1 | draws: 1 uA, shed: 1",
                "study | draws: 4 A (guess), shed: 1 | draws: 4 A, as: constant-power, duty: 0.001 %, shed: 1",
                "study | draws: 4 A (guess), minimum: 7 V (guess) | draws: 1 uA, minimum: 1 mV",
                "study | draws: 4 A (guess), minimum: 7 V (guess) | draws: 4 A, ride-through: 1000 h",
                "study | ride-through: 300 ms (guess) | ride-through: 0 s, boot: 10 h",
                "study | minimum: 8 V (guess), ride | minimum: 11.99 V, restart: 12 V, ride",
                "study | panel:  {across: 0.5 m (guess) | panel: {across: 1 m, temperature: -40 °C",
                "study | panel:  {across: 0.5 m (guess) | panel: {across: 1 m, temperature: -59 °C",
                "study | panel:  {across: 0.5 m (guess) | panel: {across: 1 m, temperature: 200 °C",
                "study | across: 0.6 m (guess) | across: 30 m",
                "study | across: 0.6 m (guess) | across: 1 mm",
                "study | lasts: 60 min | lasts: 0.1 s",
                "study | lasts: 60 min | lasts: 10000 h",
                "study | 6000 rpm | 0.001 rpm",
                "study | 6000 rpm | 1000000 rpm",
                "study | tolerates: 1 s (guess) | tolerates: 0 s",
                "study | restarts-in: 3 s (guess) | restarts-in: 0 s",
                "study | time-to-land: 20 min | time-to-land: 1 us",
                "study | nominal: 14 V | nominal: 1 kV",
                "one-bus | capacity: 18 Ah (guess) | capacity: 1 mAh",
                "one-bus | capacity: 18 Ah (guess) | capacity: 1000000 Ah",
                "one-bus | capacity: 18 Ah (guess) | resistance: 1 uohm",
                "one-bus | capacity: 18 Ah (guess) | resistance: 100 ohm",
                "one-bus | capacity: 18 Ah (guess) | charge: 0 %",
                "one-bus | capacity: 18 Ah (guess) | charge: 100 %, health: 0.1 %",
                "one-bus | capacity: 18 Ah (guess) | rated-over: 1 s, peukert: 2",
                "one-bus | rating: 30 A (guess) | rating: 10 kA",
                "one-bus | rating: 30 A (guess) | rating: 1 mA",
                "one-bus | rating: 30 A (guess) | set-point: 1 V",
                "one-bus | rating: 30 A (guess) | set-point: 34 V, droop: 10 ohm",
                "one-bus | rating: 30 A (guess) | field-resistance: 1 mohm",
                "one-bus | after: 60 s | after: 0 s",
                "one-bus | after: 60 s | after: 10000 h, one-each: 1 us",
                "one-bus | below: 13 V | below: 1 mV, for: 0 s",
                "one-bus | below: 13 V | below: 1 kV, for: 100 h"
            })
    void areToldToTheEnd(String file, String from, String to) {
        Session session = Session.in(here);
        Path folder = session.copyOfFirstSteps("small");
        Session.change(folder.resolve(file + ".yaml"), from, to);
        assertTrue(!session.run("check", "small").out().contains("1 problem"), to);
        Ran ran = session.run("break", "small", "--candidate", "one-bus");
        boolean unable = ran.err().contains("the engine does not run in normal flight");
        assertTrue(ran.code() == ExitCode.FINE || unable, ran.code() + "\n" + ran.err());
    }

    @ParameterizedTest
    @CsvSource({"10 kA, 0.1 s, -40 °C", "1 uA, 0.1 s, -40 °C", "10 kA, 10 h, 60 °C"})
    void anAbsurdStarterIsCrankedToTheEnd(String draws, String lasts, String celsius) {
        Session session = Session.in(here);
        Path study = session.copyOfFirstSteps("small").resolve("study.yaml");
        Session.change(
                study, "draws: 4 A (guess), shed: 1", "draws: " + draws + ", phases: [start]");
        Session.change(
                study,
                "windmills: yes",
                "windmills: yes\n  starter: lights\n  cold-start: " + celsius);
        Session.change(
                study,
                "phases:\n",
                "phases:\n  - {name: start, lasts: " + lasts + ", alternator: 0 rpm}\n");
        for (String candidate : new String[] {"one-bus", "bus-and-battery"}) {
            Path file = here.resolve("small").resolve(candidate + ".yaml");
            Session.change(file, "after: 60 s, sheds: [lights]", "after: 60 s");
            Session.change(
                    file,
                    "lights:     from main-bus, breaker 7.5 A",
                    "lights:     from main-bus, breaker 7.5 A, wire AWG 2/0");
        }
        Ran ran = session.run("break", "small", "--candidate", "one-bus");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.out().contains("Starting the engine on the ground"), ran.out());
    }
}

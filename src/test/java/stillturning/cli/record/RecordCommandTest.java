package stillturning.cli.record;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.parts.element.Capacity;
import stillturning.parts.element.curve.RestVoltage;
import tools.jackson.databind.JsonNode;

/** What was measured of a small study, as somebody hands it in. */
class RecordCommandTest {

    @TempDir private Path here;
    private Path study = Path.of("");

    @BeforeEach
    void copyTheSmallStudy() {
        study = Session.in(here).copyOfFirstSteps("small");
    }

    private Ran record(String... more) {
        List<String> words = new ArrayList<>(List.of("record", "small", "--candidate", "one-bus"));
        words.addAll(List.of(more));
        return Session.in(here).run(words.toArray(String[]::new));
    }

    private Ran fine(String... more) {
        Ran ran = record(more);
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        return ran;
    }

    private String refused(String... more) {
        Ran ran = record(more);
        assertEquals(ExitCode.BAD_INPUT, ran.code(), ran.out());
        assertEquals("", ran.out());
        return ran.err();
    }

    /** A battery of 12 Ah that is discharged with 4 A and 9 A in turn. */
    private void log() throws IOException {
        Random random = new Random(5);
        RestVoltage curve = RestVoltage.LEAD_ACID;
        Capacity capacity = new Capacity(12 * 3600, 20, 1.1);
        StringBuilder text = new StringBuilder("time (s);volts;amps\n");
        double charge = 0.97;
        for (int i = 0; i < 500; i++) {
            double amps = i / 45 % 2 == 0 ? 4 : 9;
            int piece = curve.pieceAt(charge);
            double volts =
                    curve.voltsOn(piece, charge) - amps * 0.014 * curve.resistanceOn(piece, charge);
            text.append(
                    String.format(
                            Locale.ROOT,
                            "%d;%.3f;%.1f%n",
                            10 * i,
                            volts + 0.008 * random.nextGaussian(),
                            amps));
            charge -= 10 * capacity.usedPerSecond(amps);
        }
        Files.writeString(here.resolve("log.csv"), text);
    }

    @Test
    void aFormThatWasFilledInIsHeldAgainstWhatIsPredictedAndKept() throws IOException {
        fine("--form", "bench.yaml");
        Path form = here.resolve("bench.yaml");
        assertTrue(refused("--form", "bench.yaml").contains("is there already"));
        Session.change(form, "date: ", "date: 2026-05-17");
        Session.change(form, "  radio: ", "  radio: 2.9 A at 12.4 V");
        Session.change(form, "  pump-a-wire: ", "  pump-a-wire: 0.9 V at 10 A");
        String text = Session.text(form).replaceFirst("result: ", "result: failed");
        Files.writeString(form, text.replaceFirst("main-bus: ", "main-bus: 12.3 V"));

        String told = fine("bench.yaml").out();
        assertTrue(told.contains("3 of 4 measurements do not keep to"), told);
        assertTrue(told.contains("0 passed, 1"), told);
        assertTrue(told.contains("more than"), told);
        assertTrue(told.contains("loads.radio.draws"), told);
        assertTrue(told.contains("Added to the record: "), told);
        assertTrue(told.lines().allMatch(line -> line.length() <= 100), told);
        assertTrue(fine("bench.yaml").out().contains("has just this entry already"));
        String kept = Session.text(study.resolve("measured").resolve("one-bus.yaml"));
        assertTrue(kept.contains("verdict: \"not done\""), kept);
        assertEquals(
                ExitCode.FINE,
                Session.in(here).run("check", "small").code(),
                "a record is no candidate");

        Session.change(form, "2.9 A at 12.4 V", "2.9 A");
        Session.change(form, "date: 2026-05-17", "date: 2026-05-32");
        String faults = refused("bench.yaml");
        assertTrue(faults.contains("2 problems in the form"), faults);
        assertTrue(faults.contains("hangs on its voltage"), faults);
        assertTrue(faults.contains("is no day"), faults);
    }

    @Test
    void anOlderFormIsTakenWithWhatIsNoLongerAskedFor() throws IOException {
        fine("--form", "bench.yaml");
        Path form = here.resolve("bench.yaml");
        Session.change(form, "date: ", "date: 2026-05-17");
        Session.change(form, "  radio: ", "  horn: 2.9 A at 12.4 V\n  radio: ");
        assertTrue(refused("bench.yaml").contains("nothing of this name is asked for here"));
        Session.change(study.resolve("study.yaml"), "nominal: 14 V", "nominal: 14 V  # as it is");
        String told = fine("bench.yaml").out().replaceAll("\\s+", " ");
        assertTrue(told.contains("The study has changed since the form was written"), told);
        assertTrue(told.contains("No longer asked for"), told);
        assertTrue(told.contains("loads.horn: 2.9 A at 12.4 V"), told);
        String kept = Session.text(study.resolve("measured").resolve("one-bus.yaml"));
        assertTrue(kept.contains("what: \"loads.horn\""), kept);
        assertTrue(kept.contains("measured: \"2.9 A at 12.4 V\""), kept);
        assertTrue(fine("bench.yaml").out().contains("has just this entry already"));
    }

    @Test
    void theLogOfADischargeBecomesMeasuredValuesOfTheStudy() throws IOException {
        log();
        Path file = study.resolve("one-bus.yaml");
        String before = Session.text(file);
        String[] ask = {"--log", "log.csv", "--temperature", "25 degC"};
        String told = fine(ask).out();
        assertTrue(told.contains("Nothing was added to the record"), told);
        assertEquals(before, Session.text(file));

        String saved = fine(ask[0], ask[1], ask[2], ask[3], "--date", "2026-05-17", "--save").out();
        assertTrue(saved.contains("one-bus.yaml; as it was:"), saved);
        assertTrue(Session.text(file).contains("%"), "no health");
        assertTrue(Session.text(file).contains("(measured, 2026-05-17)"), Session.text(file));
        assertTrue(Session.text(file).contains("# everything on one bar"), "comments are not kept");
        assertEquals(before, Session.text(study.resolve("one-bus.yaml~")));
        assertEquals(ExitCode.FINE, Session.in(here).run("check", "small").code());
        // once the study says it, nothing is left to offer and nothing disagrees
        JsonNode again = Session.tree(fine(ask[0], ask[1], ask[2], ask[3], "--json").out());
        for (JsonNode line : again.get("measurements")) {
            assertFalse(line.get("verdict").stringValue().equals("DISAGREES"), line.toString());
        }
    }

    @Test
    void wrongQuestionsAreRefused() throws IOException {
        assertTrue(refused().contains("say what was measured"));
        log();
        assertTrue(refused("--log", "log.csv", "--battery", "batery").contains("did you mean"));
        assertTrue(refused("--log", "log.csv", "--charge", "120 %").contains("at most 100 %"));
        assertTrue(refused("--log", "log.csv", "--date", "tomorrow").contains("is no day"));
        assertTrue(refused("--log", "none.csv").contains("cannot be read"));
        Files.writeString(here.resolve("bad.csv"), "time (s),volts,amps\n1,2,x\n2,y,3\n");
        String faults = refused("--log", "bad.csv");
        assertTrue(faults.contains("2 problems in the log"), faults);
        assertTrue(faults.contains("bad.csv:2:5"), faults);
    }
}

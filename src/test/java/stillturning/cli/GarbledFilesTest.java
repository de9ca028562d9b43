package stillturning.cli;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;

/**
 * Every file that a command takes, spoilt by lot: it is refused by name or what it says is
 * computed, in bounded time, and never an error of the program or a number that is none. More of
 * them with {@code -Dgarbled=100000}, others with {@code -Dgarbled.seed=2}.
 */
class GarbledFilesTest {

    private static final int INPUTS = Integer.getInteger("garbled", Effort.cases(12, 400));
    private static final long SEED = Long.getLong("garbled.seed", 1);

    /** No command on so small a study takes so long, on a busy machine either (s). */
    private static final double LONGEST_SECONDS = 120;

    private static final String STUDY = "small";

    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");

    private static final List<String> NUMBERS =
            List.of(
                    "0",
                    "-1",
                    "1e-15",
                    "1e-9",
                    "1e9",
                    "1e300",
                    "1e308",
                    "1e-308",
                    "4.9e-324",
                    "9999999999999",
                    "0.000001",
                    "NaN",
                    "Infinity",
                    "1_000",
                    "1,5",
                    "٣",
                    "+3",
                    "5..9",
                    "1e",
                    "0x10",
                    "99",
                    "50",
                    "3");

    private static final String CHARACTERS =
            " :,.-{}[]()\"'#&*!|>%@=019aeZ\n\t\u00b5\u2126\u202e\u001b";

    @TempDir private Path here;
    private Session session;
    private String form;
    private String kept;
    private String log;

    @BeforeEach
    void makeWhatIsSpoilt() throws IOException {
        session = Session.in(here);
        session.copyOfFirstSteps(STUDY);
        fine("record", STUDY, "--candidate", "one-bus", "--form", "form.yaml");
        form = Session.text(here.resolve("form.yaml")).replace("date: ", "date: 2026-05-17");
        fine("break", STUDY, "--pairs", "--order", "1", "--resume", "kept.json");
        kept = Session.text(here.resolve("kept.json"));
        StringBuilder readings = new StringBuilder("time (s),voltage (V),current (A)\n");
        for (int i = 0; i < 40; i++) {
            readings.append(i * 60).append(',').append(12.8 - i * 0.01).append(",5.0\n");
        }
        log = readings.toString();
    }

    private void fine(String... words) {
        Ran ran = session.run(words);
        assertTrue(ran.code() <= ExitCode.REQUIREMENT_MISSED, ran.err());
    }

    @Test
    void aStudyIsComputedOrRefused() throws IOException {
        Path file = here.resolve(STUDY).resolve("study.yaml");
        spoil(file, Session.text(file), 1);
    }

    @Test
    void aCandidateIsComputedOrRefused() throws IOException {
        Path file = here.resolve(STUDY).resolve("one-bus.yaml");
        spoil(file, Session.text(file), 2);
    }

    private void spoil(Path file, String text, long door) throws IOException {
        SplittableRandom random = new SplittableRandom(SEED * 1000 + door);
        for (int i = 0; i < INPUTS; i++) {
            Files.writeString(file, garbled(text, random));
            String[] words =
                    switch (random.nextInt(8)) {
                        case 0 -> new String[] {"decide", STUDY};
                        case 1 -> new String[] {"size", STUDY};
                        case 2 -> new String[] {"break", STUDY, "--failure", "charging lost"};
                        default -> new String[] {"check", STUDY};
                    };
            hold(file, words);
        }
        Files.writeString(file, text);
    }

    @Test
    void aFilledFormIsReadOrRefused() throws IOException {
        Path file = here.resolve("filled.yaml");
        SplittableRandom random = new SplittableRandom(SEED * 1000 + 3);
        for (int i = 0; i < INPUTS; i++) {
            Files.writeString(file, garbled(form, random));
            hold(file, "record", STUDY, "filled.yaml");
            Files.deleteIfExists(here.resolve(STUDY).resolve("one-bus.record.yaml"));
        }
    }

    @Test
    void aLogIsReadOrRefused() throws IOException {
        Path file = here.resolve("log.csv");
        SplittableRandom random = new SplittableRandom(SEED * 1000 + 4);
        for (int i = 0; i < INPUTS; i++) {
            Files.writeString(file, garbled(log, random));
            hold(
                    file,
                    "record",
                    STUDY,
                    "--candidate",
                    "one-bus",
                    "--battery",
                    "battery",
                    "--log",
                    "log.csv");
        }
    }

    @Thorough
    @Test
    void keptWorkIsGoneOnWithOrRefused() throws IOException {
        Path file = here.resolve("kept.json");
        SplittableRandom random = new SplittableRandom(SEED * 1000 + 5);
        for (int i = 0; i < INPUTS; i++) {
            Files.writeString(file, garbled(kept, random));
            hold(file, "break", STUDY, "--pairs", "--order", "1", "--resume", "kept.json");
        }
    }

    private void hold(Path file, String... words) {
        long before = System.nanoTime();
        Ran ran = session.run(words);
        double seconds = (System.nanoTime() - before) / 1e9;
        String where = String.join(" ", words) + " with\n" + Session.text(file);
        assertTrue(ran.code() <= ExitCode.BAD_INPUT, () -> ran.err() + ran.out() + where);
        String said = ran.code() == ExitCode.BAD_INPUT ? "" : ran.out();
        assertFalse(said.contains("NaN") || said.contains("Infinity"), () -> said + where);
        assertTrue(seconds < LONGEST_SECONDS, () -> seconds + " s for " + where);
    }

    private static String garbled(String text, SplittableRandom random) {
        String garbled = text;
        for (int times = random.nextInt(1, 4); times > 0; times--) {
            garbled =
                    switch (random.nextInt(4)) {
                        case 0 -> withLine(garbled, random);
                        case 1 -> withCharacter(garbled, random);
                        default -> withNumber(garbled, random);
                    };
        }
        return garbled;
    }

    private static String withNumber(String text, SplittableRandom random) {
        List<MatchResult> all = NUMBER.matcher(text).results().toList();
        if (all.isEmpty()) {
            return text;
        }
        MatchResult one = all.get(random.nextInt(all.size()));
        String number = NUMBERS.get(random.nextInt(NUMBERS.size()));
        return text.substring(0, one.start()) + number + text.substring(one.end());
    }

    private static String withLine(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        if (lines.isEmpty()) {
            return text;
        }
        int at = random.nextInt(lines.size());
        switch (random.nextInt(5)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 -> lines.set(at, "  " + lines.get(at));
            case 3 -> lines.set(at, lines.get(random.nextInt(lines.size())));
            default -> lines.subList(at, lines.size()).clear();
        }
        return String.join("\n", lines) + "\n";
    }

    private static String withCharacter(String text, SplittableRandom random) {
        if (text.isEmpty()) {
            return text;
        }
        int at = random.nextInt(text.length());
        char character = CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
        String with = random.nextInt(4) == 0 ? "" : String.valueOf(character);
        int skipped = random.nextInt(3);
        return text.substring(0, at) + with + text.substring(Math.min(text.length(), at + skipped));
    }
}

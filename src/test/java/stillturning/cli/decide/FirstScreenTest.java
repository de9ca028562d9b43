package stillturning.cli.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.RepeatedTest;
import org.junit.jupiter.api.RepetitionInfo;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.cli.Session;
import stillturning.cli.Session.Ran;
import stillturning.cli.terminal.ExitCode;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstAnswer.AnswerFinding;
import stillturning.report.answer.FirstAnswer.AnswerTopic;
import stillturning.report.answer.FirstAnswer.CandidateLine;
import stillturning.report.answer.FirstAnswer.CandidateTable;
import stillturning.report.answer.FirstAnswer.LeftOut;
import stillturning.report.answer.FirstAnswer.NotAsked;
import tools.jackson.databind.JsonNode;

/** A screen has 40 lines of 100 columns; an answer that needs more is not read. */
class FirstScreenTest {

    private static final int LINES = 40;
    private static final int COLUMNS = 100;

    @TempDir private Path here = Path.of("");

    @Test
    void twelveCandidatesFitOnOneScreenWithAllThatIsSaid() throws IOException {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        String other = Files.readString(folder.resolve("bus-and-battery.yaml"));
        for (int i = 3; i <= 12; i++) {
            Files.writeString(
                    folder.resolve("more-" + i + ".yaml"),
                    other.replaceFirst(
                            "candidate: .*", "candidate: A layout with a rather long name, " + i));
        }
        Ran ran = Session.in(here).run("decide", "small");
        assertScreen(ran);
        assertEquals(
                12,
                ran.lines().stream()
                        .filter(l -> l.matches(" ?\\d+ .*[+-]+ +\\d\\.\\d{3} .*"))
                        .count());
        assertTrue(ran.out().startsWith("First steps"), ran.out());
        for (AnswerTopic topic :
                List.of(
                        AnswerTopic.FIRST,
                        AnswerTopic.FIRM,
                        AnswerTopic.BREAKS,
                        AnswerTopic.NEXT)) {
            assertTrue(ran.out().contains("\n" + topic.words() + " "), topic + ran.out());
        }
        assertTrue(ran.out().contains("not asked: "), ran.out());
    }

    static void assertScreen(Ran ran) {
        assertTrue(ran.lines().size() <= LINES, ran.lines().size() + " lines: " + ran.out());
        ran.lines().forEach(line -> assertTrue(line.length() <= COLUMNS, line));
    }

    /** Whatever is found, the caution of three lines included. */
    @RepeatedTest(200)
    void noAnswerIsLargerThanAScreen(RepetitionInfo info) {
        SplittableRandom random = new SplittableRandom(info.getCurrentRepetition());
        List<String> lines = new FirstScreen(answer(random)).lines();
        assertTrue(lines.size() <= LINES - 3, lines.size() + ": " + String.join("\n", lines));
        lines.forEach(line -> assertTrue(line.length() <= COLUMNS, line));
    }

    private static FirstAnswer answer(SplittableRandom random) {
        List<AnswerFinding> findings = new ArrayList<>();
        for (AnswerTopic topic : AnswerTopic.values()) {
            for (int i = random.nextInt(1, 6); i > 0; i--) {
                findings.add(new AnswerFinding(topic, text(random, 60)));
            }
        }
        int requirements = random.nextInt(12);
        int criteria = random.nextInt(1, 7);
        List<CandidateLine> candidates = new ArrayList<>();
        for (int i = random.nextInt(1, 20); i > 0; i--) {
            candidates.add(
                    new CandidateLine(
                            i,
                            text(random, 12),
                            IntStream.range(0, requirements).mapToObj(n -> n % 2 == 0).toList(),
                            0.5,
                            IntStream.range(0, criteria).mapToObj(n -> "12 h 4 min").toList()));
        }
        return new FirstAnswer(
                "A study",
                "7 candidates",
                text(random, 40),
                findings,
                new CandidateTable(
                        texts(random, requirements),
                        IntStream.range(0, criteria).mapToObj(i -> "endurance").toList(),
                        candidates),
                texts(random, random.nextInt(5)).stream().map(t -> new LeftOut("x", t)).toList(),
                texts(random, random.nextInt(5)).stream().map(t -> new NotAsked(t, t)).toList());
    }

    private static List<String> texts(SplittableRandom random, int number) {
        return IntStream.range(0, number).mapToObj(i -> text(random, 1 + i)).toList();
    }

    private static String text(SplittableRandom random, int mostWords) {
        return IntStream.range(0, random.nextInt(1, mostWords + 1))
                .mapToObj(i -> "abcdefghij".substring(0, random.nextInt(1, 10)))
                .collect(Collectors.joining(" "));
    }

    @Test
    void aCandidateWithAMistakeIsLeftOutAndSaidSo() throws IOException {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        String sound = Files.readString(folder.resolve("bus-and-battery.yaml"));
        Files.writeString(
                folder.resolve("broken.yaml"), sound.replace("is: battery", "is: batery"));
        Ran ran = Session.in(here).run("decide", "small");
        assertEquals(ExitCode.FINE, ran.code(), ran.err());
        assertTrue(ran.lines().get(0).contains("2 of 3 candidates"), ran.out());
        assertTrue(ran.out().contains("left out: broken.yaml: "), ran.out());
        assertTrue(ran.out().contains("batery"), ran.out());
        assertScreen(ran);
        JsonNode json = Session.tree(Session.in(here).run("decide", "small", "--json").out());
        assertEquals(
                "broken.yaml", json.at("/answer/leftOut/0/candidate").asString(), json.toString());
        String full = Session.in(here).run("decide", "small", "--full").out();
        assertTrue(full.contains("broken.yaml is left out: "), full);
    }

    @Test
    void aMistakeInTheStudysOwnFileLeavesNothingToDecide() {
        Path folder = Session.in(here).copyOfFirstSteps("small");
        Session.change(folder.resolve("study.yaml"), "charging: 30 min", "charging: soon");
        assertEquals(ExitCode.BAD_INPUT, Session.in(here).run("decide", "small").code());
    }
}

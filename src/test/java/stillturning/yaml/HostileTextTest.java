package stillturning.yaml;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.bench.Effort;
import stillturning.yaml.shape.Sample;

class HostileTextTest {

    private static final int MEGA = 1_000_000;

    @TempDir Path folder;

    // an idle machine needs well under a second for each; the limit leaves room for a busy one
    private static BindResult<Sample.Drawing> bind(YamlDocument document) {
        return assertTimeoutPreemptively(
                Duration.ofSeconds(10), () -> Sample.BINDER.bind(document, Sample.Drawing.class));
    }

    static List<String> floods() {
        return List.of(
                "[".repeat(MEGA),
                "{".repeat(MEGA),
                "[{".repeat(MEGA / 2),
                "- ".repeat(MEGA / 2),
                "? ".repeat(MEGA / 2),
                "a: ".repeat(MEGA / 3),
                ": ".repeat(MEGA / 2),
                "!".repeat(MEGA),
                "&".repeat(MEGA),
                "*".repeat(MEGA),
                "%".repeat(MEGA),
                "|\n".repeat(MEGA / 2),
                ">\n ".repeat(MEGA / 3),
                "\t".repeat(MEGA),
                "\n".repeat(MEGA),
                "#".repeat(MEGA),
                "x".repeat(MEGA),
                "x ".repeat(MEGA / 2),
                "'" + "x".repeat(MEGA),
                "\"" + "\\n".repeat(MEGA / 2),
                "a: |\n" + "  x\n".repeat(MEGA / 4),
                "---\n".repeat(MEGA / 4),
                "a: &a [*a,*a]\n",
                "a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\n",
                "<<: {a: 1}\n",
                "- x\n".repeat(MEGA / 4),
                "[" + "x,".repeat(MEGA / 2) + "]",
                "same: 1\n".repeat(MEGA / 8),
                "a: !!java/object:java.net.URL [x]\n",
                IntStream.range(0, 200)
                        .mapToObj(i -> " ".repeat(i) + "a:\n")
                        .collect(Collectors.joining()),
                IntStream.range(0, Effort.cases(20_000, 90_000))
                        .mapToObj(i -> "k" + i + ": v\n")
                        .collect(Collectors.joining()),
                "parts:\n"
                        + IntStream.range(0, Effort.cases(8_000, 30_000))
                                .mapToObj(i -> "  k" + i + ": {is: wire}\n")
                                .collect(Collectors.joining()));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("floods")
    void aFloodOfOneKindEndsInProblems(String text) {
        BindResult<Sample.Drawing> bound = bind(Sample.document(text));
        assertFalse(bound.problems().isEmpty());
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
    void aMegabyteOfRandomBytesEndsInProblems(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        byte[] bytes = new byte[MEGA];
        byte[] letters = "ab:-[]{}#&*!|>'\"%@`,? \n\n  \t12".getBytes(StandardCharsets.UTF_8);
        for (int i = 0; i < bytes.length; i++) {
            bytes[i] =
                    seed % 2 == 0
                            ? (byte) random.nextInt(256)
                            : letters[random.nextInt(letters.length)];
        }
        Path file = Files.write(folder.resolve("random.yaml"), bytes);
        assertFalse(bind(YamlDocument.read(file)).problems().isEmpty(), () -> "seed " + seed);
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4})
    void aDamagedDocumentIsBoundOrExplainedAtAPlaceInIt(long seed) {
        SplittableRandom random = new SplittableRandom(seed);
        for (int i = 0; i < 500; i++) {
            StringBuilder text = new StringBuilder(Sample.TEXT);
            for (int n = random.nextInt(1, 4); n > 0; n--) {
                int at = random.nextInt(Math.max(1, text.length()));
                switch (random.nextInt(3)) {
                    case 0 -> text.delete(at, at + 1);
                    case 1 ->
                            text.insert(
                                    Math.min(at, text.length()),
                                    ":-[]{}#&*!|>'\"%,? \n\t9x".charAt(random.nextInt(22)));
                    default -> text.setLength(at);
                }
            }
            BindResult<Sample.Drawing> bound = Sample.bind(text.toString());
            assertEquals(bound.problems().isEmpty(), bound.value().isPresent());
            int lines = text.toString().split("\n", -1).length + 1;
            for (Problem problem : bound.problems()) {
                assertTrue(
                        problem.line() >= 1 && problem.line() <= lines,
                        () -> "seed " + seed + ": " + problem);
                assertTrue(
                        problem.column() >= 1
                                && !problem.wrong().isBlank()
                                && !problem.right().isBlank());
                assertTrue(problem.shownIn(text.toString()).endsWith("^"));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"title: \"\\e[31mred\"\n", "title: \u202efdp.exe\n", "\"a\\rb\": x\n"})
    void whatIsNotSeenAndChangesWhatIsShownIsRefusedWithItsPlace(String text) {
        List<Problem> problems = bind(Sample.document(text)).problems();
        Problem first = problems.get(0);
        assertTrue(first.wrong().contains("is not seen and changes how others are shown"), text);
        assertEquals(1, first.line());
        problems.forEach(
                p ->
                        assertTrue(
                                p.shownIn(text)
                                        .codePoints()
                                        .noneMatch(
                                                c -> c != '\n' && Invisible.changesWhatIsShown(c)),
                                p.toString()));
    }

    @Test
    void bytesThatAreNoTextAreNamedWithTheirPlace() throws IOException {
        Path file =
                Files.write(
                        folder.resolve("latin.yaml"),
                        "title: x\nname: caf\u00e9\n".getBytes(StandardCharsets.ISO_8859_1));
        assertEquals(
                "[latin.yaml:2:10: the byte 0xE9 is no text in UTF-8; save the file as UTF-8]",
                YamlDocument.read(file).problems().toString());
        Path cut = Files.write(folder.resolve("cut.yaml"), new byte[] {'a', ':', ' ', (byte) 0xc3});
        assertEquals(
                "[cut.yaml:1:4: the byte 0xC3 is no text in UTF-8; save the file as UTF-8]",
                YamlDocument.read(cut).problems().toString());
        Path large = Files.write(folder.resolve("large.yaml"), new byte[4_000_001]);
        assertEquals(
                "[large.yaml:1:1: the file is larger than 4 MB; split it]",
                YamlDocument.read(large).problems().toString());
    }

    private static String first(String text) {
        return YamlDocument.of(Path.of("x"), text).problems().get(0).toString();
    }

    @Test
    void syntaxIsExplainedInPlainWordsAtItsPlace() {
        assertEquals(
                "x:2:1: a tab stands where spaces belong; indent with spaces",
                first("a:\n\tb: 1\n"));
        assertEquals(
                "x:1:5: a second \": \" stands in one value, or this line is indented too far; put quotes around the whole value, or line it up with its neighbours",
                first("a: b: c"));
        assertEquals(
                "x:1:4: the quotes that open here are never closed; close them",
                first("a: 'b\nc: d\n"));
        assertEquals(
                "x:2:1: this line has no \": \"; write \"key: value\", or indent it under the line to which it belongs",
                first("a: 1\nb\nc: 2\n"));
        assertEquals(
                "x:3:2: this does not line up with the keys above; give keys of one mapping the same indentation",
                first("a:\n  b: 1\n c: 2\n"));
        assertEquals(
                "x:1:7: the text ends before this is complete; add what is missing, or close with } or ] what is open",
                first("a: {b:"));
        for (String open :
                List.of("{{", "{[", "[[", "[{", "a: {{", "a: [{", "a:\n  - {{ ", "{{{{{{{")) {
            assertTrue(first(open).contains(": the text ends before this is complete;"), open);
        }
        assertEquals(
                "x:1:2: behind this, a number stands for a character that there is not; write the character itself",
                first("a: \"\\UFFFFFFFF\""));
        for (String version : List.of("%YAML 2.0", "%YAML 99999999999.1", "%YAML 1.99999999999")) {
            assertTrue(first(version + "\n---\na: 1").endsWith("; take it out"), version);
        }
        assertEquals(
                "x:1:5: a value is missing here; write one, or take the mark before it out",
                first("a: [,"));
        assertEquals(
                "x:1:4: the [ that opens here is not closed as it should be; separate items with commas and close with ]",
                first("a: [b\nc: d\n"));
        assertEquals(
                "x:1:4: a text cannot start with this character; put quotes around the text",
                first("a: @b\n"));
        assertEquals(
                "x:1:1: nothing is written in the file; write at least one \"key: value\"",
                first("# only a comment\n"));
        assertEquals(
                "x:1:4: the character U+0007 does not belong in a text; take it out",
                first("a: \u0007"));
        assertEquals(
                "x:2:1: a second document starts here; keep one document in a file: take the line \"---\" out",
                first("a: 1\n---\nb: 2\n"));
        assertEquals(
                "x:1:4: a: an anchor (&) stands here; take it out, and write the value out where it is used",
                first("a: &x 1"));
        assertEquals(
                "x:1:4: a: a reference (*) to another place stands here; write the value out",
                first("a: *x"));
        assertEquals(
                "x:1:4: a: a type tag (!) stands here; take it out, or put quotes around the text",
                first("a: !!str 1"));
        assertEquals("x:1:1: a merge key (<<) stands here; write the fields out", first("<<: 1"));
        assertEquals(
                "x:1:1: a line that starts with % stands before the document; take it out",
                first("%YAML 1.2\n---\na: 1\n"));
        assertEquals(
                "x:2:1: a: \"a\" is already written in line 1, column 1; keep one of the two",
                first("a: 1\na: 2\n"));
        assertEquals(
                "x:1:1: a list or mapping stands where a key belongs; write a plain word as key",
                first("[a]: 1\n"));
    }

    @Test
    void aByteOrderMarkAndEveryLineBreakAreTolerated() {
        for (String text :
                List.of(
                        "\ufeff" + Sample.TEXT,
                        Sample.TEXT.replace("\n", "\r\n"),
                        "---\n" + Sample.TEXT + "...\n")) {
            assertEquals(List.of(), Sample.bind(text).problems());
        }
    }
}

package stillturning.files;

import stillturning.parts.PartKind;
import stillturning.parts.PartKinds;
import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class MistakesTest {

    /** How many choices a message names. */
    private static final int MOST_NAMED = 12;


    /** One block of the list. */
    record Mistake(String replaced, String by, String told) {
        @Override
        public String toString() {
            return replaced + " => " + by;
        }
    }

    @TempDir Path folder;

    static List<Mistake> mistakes() throws IOException {
        try (InputStream in =
                requireNonNull(MistakesTest.class.getResourceAsStream("mistakes.txt"))) {
            String text = withKinds(new String(in.readAllBytes(), StandardCharsets.UTF_8));
            return Arrays.stream(text.split("\n\n"))
                    .filter(block -> block.startsWith("- "))
                    .map(MistakesTest::mistake)
                    .toList();
        }
    }

    /** The lists of kinds in messages are those of the program, so that a new one changes no row. */
    private static String withKinds(String text) {
        List<String> written =
                PartKinds.all().stream()
                        .filter(kind -> kind.values().isPresent())
                        .map(PartKind::word)
                        .toList();
        List<String> first =
                PartKinds.all().stream().map(PartKind::word).sorted().limit(MOST_NAMED).toList();
        return text.replace("{kinds}", String.join(", ", written))
                .replace("{first kinds}", String.join(", ", first) + ", ...");
    }

    private static Mistake mistake(String block) {
        List<String> lines = block.lines().toList();
        return new Mistake(
                lines.get(0).substring(2).replace("\\n", "\n"),
                lines.get(1).substring(2).replace("\\n", "\n"),
                lines.stream().skip(2).collect(Collectors.joining("\n")));
    }

    @ParameterizedTest
    @MethodSource("mistakes")
    void eachMistakeIsToldWithItsPlaceAndItsRemedy(Mistake mistake) throws IOException {
        boolean inOne = SampleStudy.ONE.contains(mistake.replaced);
        assertTrue(inOne || SampleStudy.STUDY.contains(mistake.replaced), "nothing is replaced");
        String study = inOne ? SampleStudy.STUDY : changed(SampleStudy.STUDY, mistake);
        String one = inOne ? changed(SampleStudy.ONE, mistake) : SampleStudy.ONE;
        ReadStudy read = SampleStudy.read(folder, study, one);
        String told =
                Stream.concat(
                                read.problems().stream().map(Object::toString),
                                read.remarks().stream().map(r -> "remark " + r))
                        .collect(Collectors.joining("\n"));
        assertEquals(mistake.told, told);
        assertEquals(read.problems().isEmpty(), read.study().isPresent());
    }

    private static String changed(String text, Mistake mistake) {
        return text.replace(mistake.replaced, mistake.by);
    }
}

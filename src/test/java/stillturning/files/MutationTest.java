package stillturning.files;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Collectors;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class MutationTest {

    private static final int ROUNDS = 40;
    private static final String CHARACTERS = " :,.-{}[]()\"'#&*!|>%@0129aZ\n\t\u00b5\u2126";

    @TempDir Path folder;

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10})
    void whateverIsGarbledThereIsAnAnswer(long seed) throws IOException {
        SplittableRandom random = new SplittableRandom(seed);
        for (int round = 0; round < ROUNDS; round++) {
            String study = SampleStudy.STUDY;
            String one = SampleStudy.ONE;
            for (int times = random.nextInt(1, 4); times > 0; times--) {
                if (random.nextInt(3) == 0) {
                    study = garbled(study, random);
                } else {
                    one = garbled(one, random);
                }
            }
            ReadStudy read = SampleStudy.read(folder, study, one);
            assertEquals(
                    read.problems().isEmpty(),
                    read.study().isPresent(),
                    "seed " + seed + ", round " + round);
            read.problems().forEach(p -> assertEquals(true, p.line() >= 1 && p.column() >= 1));
        }
    }

    private static String garbled(String text, SplittableRandom random) {
        return random.nextBoolean() ? garbledLine(text, random) : garbledCharacter(text, random);
    }

    private static String garbledLine(String text, SplittableRandom random) {
        List<String> lines = new ArrayList<>(text.lines().toList());
        int at = random.nextInt(lines.size());
        switch (random.nextInt(4)) {
            case 0 -> lines.remove(at);
            case 1 -> lines.add(at, lines.get(random.nextInt(lines.size())));
            case 2 -> lines.set(at, "  " + lines.get(at));
            default -> lines.set(at, lines.get(at).replaceFirst("from [a-z-]+", "from radio"));
        }
        return lines.stream().collect(Collectors.joining("\n", "", "\n"));
    }

    private static String garbledCharacter(String text, SplittableRandom random) {
        int at = random.nextInt(text.length());
        char character = CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
        String with = random.nextInt(4) == 0 ? "" : String.valueOf(character);
        int skipped = random.nextInt(3);
        return text.substring(0, at) + with + text.substring(Math.min(text.length(), at + skipped));
    }
}

package stillturning.bench;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/**
 * Results that are kept beside a room's tests, to the last number. No proof that they are right: a
 * call for somebody to look when one changes. Renew them with {@code mvn -q test -Dtest='Kept*Test'
 * -Dlines.renew=true}, and read the difference.
 */
public final class KeptLines {

    private static final Path TESTS = Path.of("src/test/resources/stillturning");

    private KeptLines() {}

    /** Fails unless these lines are those that lie in the file of a room. */
    public static void assertKept(String room, String file, List<String> today) throws IOException {
        Path kept = TESTS.resolve(room).resolve(file);
        if (Boolean.getBoolean("lines.renew")) {
            Files.createDirectories(kept.getParent());
            Files.write(kept, today, UTF_8);
        }
        assertEquals(String.join("\n", Files.readAllLines(kept, UTF_8)), String.join("\n", today));
    }
}

package stillturning.files;

import java.nio.file.Path;
import java.util.List;
import stillturning.fuzz.Promises;
import stillturning.fuzz.Seeds;
import stillturning.yaml.YamlDocument;

/** Any text as a candidate's file, beside a sound study. */
public final class CandidateFuzz {

    private static final Path FILE = Path.of("fuzzed", "bare.yaml");
    private static final YamlDocument STUDY =
            Seeds.document("files.StudyFuzz/bare.yaml", "study.yaml");
    private static final StudyReader BEFORE =
            StudyReader.open(Path.of("fuzzed"))
                    .holding(
                            List.of(
                                    STUDY,
                                    Seeds.document("files.CandidateFuzz/bare.yaml", "bare.yaml")),
                            List.of());

    private CandidateFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        YamlDocument candidate = YamlDocument.of(FILE, Promises.text(input));
        StudyFuzz.check(BEFORE.with(candidate), Promises.lot(input));
    }
}

package stillturning.files;

import java.nio.file.Path;
import java.util.List;
import java.util.SplittableRandom;
import stillturning.files.value.Variation;
import stillturning.fuzz.Promises;
import stillturning.fuzz.Seeds;
import stillturning.yaml.YamlDocument;

/** Any text as a study's own file, beside a sound candidate. */
public final class StudyFuzz {

    private static final Path FILE = Path.of("fuzzed", "study.yaml");
    private static final StudyReader BEFORE =
            StudyReader.open(Path.of("fuzzed"))
                    .holding(
                            List.of(
                                    Seeds.document("files.StudyFuzz/bare.yaml", "study.yaml"),
                                    Seeds.document("files.CandidateFuzz/bare.yaml", "bare.yaml")),
                            List.of());

    private StudyFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        YamlDocument study = YamlDocument.of(FILE, Promises.text(input));
        check(BEFORE.with(study), Promises.lot(input));
    }

    /** Reads the files for computing, now and then as somebody at work on them, and computes. */
    static void check(StudyReader reader, SplittableRandom lot) {
        ReadStudy read = reader.study(Variation.NONE);
        Promises.isSound(read);
        for (YamlDocument document : reader.documents()) {
            Promises.areSound(
                    read.problems().stream().filter(p -> p.file().equals(document.file())).toList(),
                    document.text());
        }
        if (lot.nextInt(16) == 0) {
            LenientReading lenient = reader.reading();
            Promises.hold(
                    lenient.read().problems().equals(read.problems()), "read twice, told twice");
            reader.forms();
        }
        if (lot.nextInt(16) == 0) {
            read.study().ifPresent(study -> Promises.canBeTold(study, lot));
        }
    }
}

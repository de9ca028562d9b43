package stillturning.files.record;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import stillturning.dossier.record.Discharged;
import stillturning.files.StudyReader;
import stillturning.files.value.Variation;
import stillturning.fuzz.Promises;
import stillturning.fuzz.Seeds;
import stillturning.model.Study;
import stillturning.reliability.asbuilt.UntellingLog;

/** Any bytes as the log of a discharge. */
public final class LogFuzz {

    private static final Path FILE = Path.of("fuzzed", "log.csv");

    private static final Study STUDY =
            StudyReader.open(Path.of("fuzzed"))
                    .holding(
                            List.of(
                                    Seeds.document("files.StudyFuzz/bare.yaml", "study.yaml"),
                                    Seeds.document("files.CandidateFuzz/bare.yaml", "bare.yaml")),
                            List.of())
                    .study(Variation.NONE)
                    .study()
                    .orElseThrow();

    private LogFuzz() {}

    public static void fuzzerTestOneInput(byte[] input) {
        LogFile.ReadLog read = LogFile.of(FILE, input);
        Promises.areSound(read.problems(), Promises.text(input).replace("\r", " "));
        Promises.hold(read.lines().isEmpty() != read.problems().isEmpty(), "read and refused");
        Promises.isNumber(read.lines(), "readings");
        SplittableRandom lot = Promises.lot(input);
        if (read.problems().isEmpty() && lot.nextInt(16) == 0) {
            conclude(read, lot.nextBoolean());
        }
    }

    private static void conclude(LogFile.ReadLog read, boolean full) {
        OptionalDouble charge = full ? OptionalDouble.of(1) : OptionalDouble.empty();
        Discharged discharged =
                new Discharged(
                        STUDY, STUDY.candidates().get(0), "cell", OptionalDouble.empty(), charge);
        try {
            Promises.isNumber(discharged.fit(read.lines(), "log.csv").fitted(), "fitted");
        } catch (UntellingLog untelling) {
            Promises.hold(untelling.why().length() > 10, "refused without a word");
        }
    }
}

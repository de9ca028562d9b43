package stillturning.sizing;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.bench.KeptLines;
import stillturning.bench.Lines;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/** Every current, size, share and finding of some candidates is what was last read. */
class KeptSizesTest {

    @ParameterizedTest
    @CsvSource({
        "architectures/sandpiper, solid-state-split-engine",
        "architectures/sandpiper, one-battery-main-bus",
        "architectures/first-steps, bus-and-battery",
        "src/test/resources/stillturning/cases/automatic-gauges, one",
        "src/test/resources/stillturning/cases/isolator, isolator"
    })
    void areWhatIsToldToday(String folder, String candidate) throws IOException, UntoldStory {
        ReadStudy file = StudyReader.read(Path.of(folder));
        Study study = file.study().orElseThrow();
        SizingReport told =
                Sizing.of(
                        study,
                        study.candidate(candidate).orElseThrow(),
                        file.sizes().installation());
        KeptLines.assertKept("sizing", candidate + ".lines", Lines.of("sizes", told));
    }
}

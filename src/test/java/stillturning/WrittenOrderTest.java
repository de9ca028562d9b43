package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import stillturning.files.ReadStudy;
import stillturning.files.SampleStudy;
import stillturning.model.Study;
import stillturning.sizing.Sizing;
import stillturning.sizing.result.Rule;
import stillturning.sizing.result.SizeFinding;
import stillturning.sizing.result.SizingReport;
import stillturning.story.UntoldStory;

/** Where a protector is written along its line decides which wire it protects. */
class WrittenOrderTest {

    @TempDir Path folder;

    /** The bus feeds a short from its side; nothing else limits it but a fuse of 60 A. */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "pump: from main-bus, breaker 10 A, wire AWG 18 3 m | ''",
                "pump: from main-bus, wire AWG 18 3 m, breaker 10 A | pump-wire",
                "pump: from main-bus, wire AWG 18 1 m, breaker 10 A, wire AWG 18 2 m | pump-wire",
            })
    void onlyTheWireBehindItIsProtected(String feed, String unprotected)
            throws IOException, UntoldStory {
        String one =
                SampleStudy.ONE.replace(
                        "pump: from main-bus, breaker 10 A, via j1 pin 2, wire AWG 16", feed);
        assertEquals(
                unprotected.isEmpty() ? List.of() : List.of(unprotected),
                shorted(one).stream().filter(w -> w.startsWith("pump-wire")).toList());
    }

    /**
     * The wire carries all that the alternator gives. It is the battery that burns it when it is
     * chafed, from the bus, whichever end is written first.
     */
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "from alternator to main-bus, wire AWG 18 1 m, fuse 20 A | ''",
                "from alternator to main-bus, fuse 20 A, wire AWG 18 1 m | alternator-lead-wire",
            })
    void theSourceMayBeAtEitherEnd(String lead, String unprotected)
            throws IOException, UntoldStory {
        String one =
                SampleStudy.ONE
                        .replace("rating: 40 A", "rating: 10 A")
                        .replace("from alternator to main-bus", lead);
        assertEquals(
                unprotected.isEmpty() ? List.of() : List.of(unprotected),
                shorted(one).stream().filter(w -> w.startsWith("alternator-lead")).toList());
    }

    private List<String> shorted(String one) throws IOException, UntoldStory {
        ReadStudy read = SampleStudy.read(folder, SampleStudy.STUDY, one);
        assertEquals("", SampleStudy.told(read));
        Study study = read.study().orElseThrow();
        SizingReport report =
                Sizing.of(study, study.candidate("one").orElseThrow(), read.sizes().installation());
        return report.findings().stream()
                .filter(f -> f.rule() == Rule.UNPROTECTED || f.rule() == Rule.HEAT)
                .map(SizeFinding::part)
                .toList();
    }
}

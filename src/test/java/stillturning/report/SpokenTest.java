package stillturning.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;

/** People read labels, not identifiers. */
class SpokenTest {

    private static final Spoken SPOKEN =
            new Spoken(
                    StudyReader.read(Path.of("architectures/sandpiper"))
                            .study()
                            .orElseThrow()
                            .candidate("solid-state-split-engine")
                            .orElseThrow());

    @Test
    void whatAStoryNamesIsCalledByItsLabel() {
        assertEquals(
                "charging lost: sheds bilge pump; engine computer A stops, low voltage shows",
                SPOKEN.sentence(
                        "charging-lost: sheds bilge-pump; computer-a stops, low-voltage shows"));
    }

    @Test
    void wordsThatNameNothingStayAsTheyAre() {
        assertEquals("over-voltage in the run-up", SPOKEN.sentence("over-voltage in the run-up"));
    }
}

package stillturning.desktop.viewmodel.draw;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.files.finding.FileFinding;
import stillturning.model.Candidate;

class FindingNamesTest {

    private static final Candidate CANDIDATE =
            StudyReader.read(Path.of("architectures", "sandpiper"))
                    .study()
                    .orElseThrow()
                    .candidate("one-battery-engine-bus")
                    .orElseThrow();

    private static FileFinding finding(boolean mistake, String words) {
        return new FileFinding(
                mistake, Path.of("a.yaml"), 1, 1, "", words, "", List.of("lights", "pump-1"));
    }

    @Test
    void aRemarkCallsPartsByTheirLabelsAndAMistakeKeepsWhatStandsInTheFile() {
        FindingNames names = new FindingNames(Optional.of(CANDIDATE));
        FileFinding remark = finding(false, "pump-1 has no switch");
        assertEquals("strobe and position lights, fuel pump 1", names.about(remark));
        assertEquals("fuel pump 1 has no switch", names.words(remark));
        assertEquals("pump-1 is twice here", names.words(finding(true, "pump-1 is twice here")));
    }

    @Test
    void whatCannotBeReadHasNoLabels() {
        FindingNames names = new FindingNames(Optional.empty());
        assertEquals("lights, pump-1", names.about(finding(false, "")));
        assertEquals("pump-1 stays", names.words(finding(false, "pump-1 stays")));
    }
}

package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.files.ReadStudy;
import stillturning.files.SampleStudy;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Wood and composite lead no current: every return is a wire, and a chafed wire meets nothing. */
class WoodenAircraftTest {

    @TempDir Path folder;

    private Study read() throws IOException {
        ReadStudy read =
                SampleStudy.read(
                        folder,
                        SampleStudy.STUDY,
                        SampleStudy.ONE.replace("on-structure: yes", "on-structure: no"));
        assertEquals("", SampleStudy.told(read));
        return read.study().orElseThrow();
    }

    @Test
    void itFliesWithoutAnyStructure() throws IOException, UntoldStory {
        Study study = read();
        NormalFlight normal = new Timeline(study, study.candidates().get(0)).normal();
        assertTrue(normal.engineRuns());
    }

    @Test
    void aChafedWireOpensNoProtector() throws IOException, UntoldStory {
        Study study = read();
        Candidate candidate = study.candidates().get(0);
        List<Failure> chafed =
                FailureCatalogue.singlesOf(candidate).stream()
                        .filter(f -> f.name().endsWith(": chafed to ground"))
                        .toList();
        assertTrue(chafed.size() > 5);
        for (Failure failure : chafed) {
            Story story = new Timeline(study, candidate).tell(failure, Pilot.PLANNED);
            assertTrue(
                    story.happenings().stream()
                            .noneMatch(e -> e.kind() == StoryEvent.Kind.PROTECTOR_OPENS),
                    failure.name());
        }
    }
}

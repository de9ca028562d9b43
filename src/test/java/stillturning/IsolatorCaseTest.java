package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.NormalFlight;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent.Kind;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** One alternator that charges two batteries through a diode isolator, as in a boat. */
class IsolatorCaseTest {

    private static final Path FOLDER =
            Path.of("src", "test", "resources", "stillturning", "cases", "isolator");

    /** No story of an aircraft of this size needs as many. */
    private static final int MOST_POINTS = 2000;

    private final ReadStudy read = StudyReader.read(FOLDER);
    private final Study study = read.study().orElseThrow();
    private final Candidate candidate = study.candidates().get(0);

    @Test
    void itIsReadWithoutMistakes() {
        assertEquals(List.of(), read.problems());
    }

    /** Both take up what the alternator gives too much, each through its diode. */
    @Test
    void theAlternatorFeedsThePanelAndChargesBothBatteries() throws UntoldStory {
        NormalFlight normal = new Timeline(study, candidate).normal();
        assertTrue(normal.engineRuns());
        Map<String, Double> amps = normal.sourceAmps();
        assertEquals(34, amps.getOrDefault("alternator", Double.NaN), 2);
        assertTrue(amps.getOrDefault("battery-1", 0.0) < 0);
        assertTrue(amps.getOrDefault("battery-2", 0.0) < 0);
    }

    /** As a builder's guard of one battery: the alternator flies on with the other. */
    @Test
    void oneBatterySteadiesTheAlternatorWhereTheOtherIsLost() throws UntoldStory {
        Timeline timeline = new Timeline(study, candidate);
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            if (failure.name().startsWith("battery-1")) {
                Story story = timeline.tell(failure, Pilot.PLANNED);
                assertTrue(story.of(Kind.SOURCE_UNSTEADY).isEmpty(), failure.name());
            }
        }
    }

    @Test
    void everySingleFailureIsToldWithBoundedEffort() throws UntoldStory {
        Timeline timeline = new Timeline(study, candidate);
        List<String> longWinded = new ArrayList<>();
        for (Failure failure : FailureCatalogue.singlesOf(candidate)) {
            Story story =
                    assertTimeoutPreemptively(
                            Duration.ofSeconds(30),
                            () -> timeline.tell(failure, Pilot.PLANNED),
                            failure.name());
            int points = story.traces().stream().mapToInt(trace -> trace.points().size()).sum();
            if (points > MOST_POINTS) {
                longWinded.add(failure.name() + ": " + points);
            }
        }
        assertEquals(List.of(), longWinded);
    }
}

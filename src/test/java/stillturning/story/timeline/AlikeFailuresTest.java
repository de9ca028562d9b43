package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.bench.Effort;
import stillturning.bench.Thorough;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;

/**
 * A chain that is open at one place or another is told once. Held against the telling of each
 * failure with everything in the circuit, what leads nowhere included.
 */
class AlikeFailuresTest {

    private static final int AIRCRAFT = Effort.cases(20, 150);

    private static final Study SANDPIPER =
            StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();

    @Thorough
    @Test
    void whatIsToldOnceHoldsForAllThatLeaveTheSame() throws UntoldStory {
        int spared = 0;
        for (Candidate candidate : SANDPIPER.candidates()) {
            Timeline timeline = Timeline.quick(SANDPIPER, candidate);
            spared += compare(timeline, candidate, Setting.with(Pilot.PLANNED), candidate.id());
        }
        assertTrue(spared > 200, spared + " failures need no telling");
    }

    @Thorough
    @Test
    void inAircraftDrawnByLotToo() throws UntoldStory {
        int spared = 0;
        for (int seed = 0; seed < AIRCRAFT; seed++) {
            RandomAircraft lot = new RandomAircraft(seed);
            Timeline timeline = new Timeline(lot.study, lot.candidate, lot.moment);
            spared += compare(timeline, lot.candidate, lot.setting, "seed " + seed);
        }
        assertTrue(spared > AIRCRAFT, spared + " failures need no telling");
    }

    /** How many failures are told by the story of another. */
    private static int compare(
            Timeline timeline, Candidate candidate, Setting setting, String where) {
        List<Failure> failures = FailureCatalogue.singlesOf(candidate);
        for (Failure failure : failures) {
            Story told = timeline.tellAsFar(failure, setting);
            Story whole = timeline.watch(failure, setting).story();
            String which = where + ", " + failure.name();
            assertEquals(failure, told.failure(), which);
            assertEquals(failure.name(), told.happenings().get(0).words(), which);
            assertTrue(
                    told.isCourseOf(whole),
                    () -> which + ": " + told.happenings() + " and " + whole.happenings());
            assertEquals(whole.aftermath(), told.aftermath(), which);
            assertEquals(whole.engine().stops(), told.engine().stops(), which);
        }
        return failures.size() - timeline.alike(failures).size();
    }

    @Test
    void namesWhatItWasAskedAbout() throws UntoldStory {
        Candidate candidate = SANDPIPER.candidates().get(0);
        Timeline timeline = Timeline.quick(SANDPIPER, candidate);
        List<Failure> chain =
                timeline.alike(FailureCatalogue.singlesOf(candidate)).stream()
                        .filter(same -> same.size() > 2)
                        .findFirst()
                        .orElseThrow();
        Story first = timeline.tellAsFar(chain.get(0), Setting.with(Pilot.PLANNED));
        Story last = timeline.tellAsFar(chain.get(2), Setting.with(Pilot.PLANNED));
        assertEquals(chain.get(2).name(), last.happenings().get(0).words());
        assertEquals(chain.get(2).hits().get(0).part(), last.happenings().get(0).part());
        assertEquals(first.engine(), last.engine());
    }
}

package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Cause;
import stillturning.model.failure.Cause.CauseKind;
import stillturning.model.failure.CommonCauses;
import stillturning.story.Pilot;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** What goes together in the demonstration study, by the layouts that its files describe. */
class SandpiperCommonCausesTest {

    private static final ReadStudy READ = StudyReader.read(Path.of("architectures/sandpiper"));
    private static final Study STUDY = READ.study().orElseThrow();

    private static List<Cause> causes(String candidate) {
        return CommonCauses.of(
                STUDY.aircraft(), STUDY.candidate(candidate).orElseThrow(), READ.chances());
    }

    private static double seconds(String candidate, Cause cause) throws UntoldStory {
        return new Timeline(STUDY, STUDY.candidate(candidate).orElseThrow())
                .tell(cause.failure(), Pilot.PLANNED)
                .engine()
                .endurance()
                .seconds();
    }

    @Test
    void everyCauseHasANameOfItsOwnARateAndTwoPartsAtLeast() {
        for (Candidate candidate : STUDY.candidates()) {
            List<Cause> causes = causes(candidate.id());
            assertEquals(causes, causes(candidate.id()));
            assertEquals(
                    causes.size(), new HashSet<>(causes.stream().map(Cause::name).toList()).size());
            for (Cause cause : causes) {
                assertTrue(cause.rate().orElseThrow().median() > 0, cause.name());
                assertTrue(
                        cause.failure().hits().stream().map(h -> h.part()).distinct().count() >= 2,
                        cause.name());
            }
        }
    }

    /** Both ways to the one engine bus torn in one hole: its loads have no other supply. */
    @Test
    void oneHoleForBothFeedsOfTheEngineBusEndsTheEngine() throws UntoldStory {
        List<Cause> holes =
                causes("one-battery-engine-bus").stream()
                        .filter(c -> c.name().startsWith("hole seat-bulkhead"))
                        .toList();
        assertEquals(2, holes.size());
        for (Cause hole : holes) {
            assertTrue(seconds("one-battery-engine-bus", hole) < 60, hole.name());
        }
    }

    @Test
    void withAHoleForEachLaneEitherIsSurvived() throws UntoldStory {
        List<Cause> holes =
                causes("solid-state-split-engine").stream()
                        .filter(c -> c.kind() == CauseKind.HOLE)
                        .toList();
        assertEquals(4, holes.size());
        for (Cause hole : holes) {
            double seconds = seconds("solid-state-split-engine", hole);
            assertTrue(seconds > STUDY.goals().enoughSeconds(), hole.name() + ": " + seconds);
        }
    }
}

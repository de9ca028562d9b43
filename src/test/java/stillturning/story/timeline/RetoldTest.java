package stillturning.story.timeline;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.story.Pilot;
import stillturning.story.Setting;
import stillturning.story.Story;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.wiring.Layouts.Left;

/** A story is told again only once so many others have been told that it is no longer kept. */
class RetoldTest {

    private static final int KEPT = 256;

    private final List<Failure> told = new ArrayList<>();
    private final Retold retold = new Retold();
    private final Story story = story();

    private static Story story() {
        try {
            Study study =
                    StudyReader.read(Path.of("architectures", "first-steps")).study().orElseThrow();
            return new Timeline(study, study.candidates().get(0)).tell(failure(-1), Pilot.NEVER);
        } catch (UntoldStory e) {
            throw new AssertionError(e);
        }
    }

    private static Failure failure(int number) {
        return new Failure("failure " + number, List.of(), Map.of());
    }

    private void tell(int number) {
        Failure failure = failure(number);
        retold.story(
                failure,
                new Left(new BitSet(), List.of(), Set.of()),
                Setting.with(Pilot.NEVER),
                () -> {
                    told.add(failure);
                    return story;
                });
    }

    @Test
    void theLastAreKept() {
        for (int number = 0; number < KEPT; number++) {
            tell(number);
        }
        tell(0);
        tell(KEPT - 1);
        assertEquals(KEPT, told.size());
        tell(KEPT);
        assertEquals(KEPT + 1, told.size());
        tell(1);
        assertEquals(KEPT + 1, told.size());
        tell(0);
        assertEquals(KEPT + 2, told.size(), "the first had to make room");
    }
}

package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.NothingBroken;
import stillturning.bench.Thorough;
import stillturning.files.StudyReader;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.report.NormalFlightTexts;
import stillturning.story.Pilot;
import stillturning.story.Story;
import stillturning.story.StoryEvent;
import stillturning.story.UntoldStory;
import stillturning.story.timeline.Timeline;

/** Studies that were refused, or of which something was given up without a word. */
class GivenUpCasesTest {

    private static final Path CASES = Path.of("src", "test", "resources", "stillturning", "cases");

    private static Study study(String name) {
        return StudyReader.read(CASES.resolve(name)).study().orElseThrow();
    }

    private static Failure failure(Study study, String name) {
        return FailureCatalogue.singlesOf(study.candidates().get(0)).stream()
                .filter(f -> f.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    /** The converter pulls its own input, behind a diode, below its minimum and stops at once. */
    @Test
    void aConverterGivenUpInNormalFlightIsNamedWithTheReasonAndTheRemedy() throws UntoldStory {
        Study study = study("chattering-converter");
        NothingBroken flight = Assess.undisturbed(study, study.candidates().get(0));
        List<StoryEvent> givenUp = flight.normal().givenUp();
        assertEquals(List.of("converter"), givenUp.stream().map(StoryEvent::part).toList());
        String words = givenUp.get(0).words();
        assertTrue(words.contains("flips to and fro without end"), words);
        assertTrue(words.contains("what helps: an input that sags less"), words);
        assertTrue(flight.unwell());
        assertTrue(NormalFlightTexts.findings(flight).get(0).startsWith("converter flips"));
    }

    /** Nothing of an ordinary study is given up. */
    @ParameterizedTest
    @ValueSource(strings = {"isolator", "shared-first-place", "floating-converter"})
    void nothingIsGivenUpElsewhere(String name) throws UntoldStory {
        Study study = study(name);
        assertEquals(
                List.of(), Assess.undisturbed(study, study.candidates().get(0)).normal().givenUp());
    }

    /** The converter hangs between two feeds for an instant: its input is at 13.175 - 4.510 V. */
    @Test
    void theFloatingConverterIsToldFromItsOperatingPoint() throws UntoldStory {
        Study study = study("floating-converter");
        Timeline timeline = new Timeline(study, study.candidates().get(0));
        Story story = timeline.tell(failure(study, "converter-minus-wire: open"), Pilot.NEVER);
        StoryEvent stops = story.of(StoryEvent.Kind.SOURCE_STOPS).get(0);
        assertEquals("converter", stops.part());
        assertEquals(0, stops.seconds(), 1e-9);
        assertEquals("stops delivering: 8.7 V at its input", stops.words());
        assertTrue(story.happenings().size() > 5);
    }

    /** Every candidate keeps its place, and no failure of these is untold. */
    @Thorough
    @ParameterizedTest
    @ValueSource(strings = {"floating-converter", "chattering-converter", "isolator"})
    void everyCandidateIsRankedWithEveryStoryTold(String name) {
        Assessment assessment = Assess.of(study(name));
        assertEquals(List.of(), assessment.unassessed());
        assertEquals(
                List.of(),
                assessment.appraisals().stream().flatMap(a -> a.untold().stream()).toList());
    }
}

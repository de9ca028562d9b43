package stillturning.assess;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import stillturning.assess.verdict.Outcome;
import stillturning.files.StudyReader;
import stillturning.model.Candidate;
import stillturning.model.Study;
import stillturning.model.failure.Failure;
import stillturning.model.failure.FailureCatalogue;
import stillturning.story.Moment;
import stillturning.story.Moment.Batteries;
import stillturning.story.Moment.FlightSpan;
import stillturning.story.UntoldStory;

/** An aircraft in which nothing flows any more, for the rest of a flight. */
class DeadAircraftTest {

    @Test
    void currentsThatAreOnlyRoundingDoNotUpsetTheBalanceHoweverLongTheyLast() throws UntoldStory {
        Study study = StudyReader.read(Path.of("architectures", "sandpiper")).study().orElseThrow();
        Candidate candidate = study.candidate("one-battery-main-bus").orElseThrow();
        Failure drops =
                FailureCatalogue.singlesOf(candidate).stream()
                        .filter(f -> f.name().equals("master-contactor: drops out"))
                        .findFirst()
                        .orElseThrow();
        Moment climb = new Moment("climb", FlightSpan.FLOWN, Batteries.AS_STATED);
        assertEquals(Outcome.ENGINE_LOST, Assess.one(study, candidate, drops, climb).outcome());
    }
}

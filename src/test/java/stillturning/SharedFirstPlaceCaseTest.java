package stillturning;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import stillturning.assess.Assess;
import stillturning.assess.Assessment;
import stillturning.assess.ranking.RankingResult;
import stillturning.files.StudyReader;
import stillturning.report.FirstPlace;
import stillturning.report.LeaderFirmness;
import stillturning.report.Reasons;

/** Only cost counts, both cost the same, and one lasts longer. */
class SharedFirstPlaceCaseTest {

    private final Assessment assessment =
            Assess.of(
                    StudyReader.read(
                                    Path.of(
                                            "src",
                                            "test",
                                            "resources",
                                            "stillturning",
                                            "cases",
                                            "shared-first-place"))
                            .study()
                            .orElseThrow());

    private final RankingResult ranking = assessment.ranking().orElseThrow();

    @Test
    void firstPlaceIsSharedAndTheBetterOneIsNamedFirst() {
        FirstPlace first = new FirstPlace(assessment, ranking);
        assertEquals("\"Two\" and \"One\"", first.titles());
        assertEquals(
                List.of(
                        "\"Two\" is at least as good as \"One\" in everything and better in"
                                + " single failures that need the pilot and endurance without"
                                + " charging, which the weights do not count; no weights put"
                                + " \"One\" alone in first place."),
                first.sharing());
    }

    @Test
    void itIsNotSaidThatNoWeightTakesThePlace() {
        List<String> firmness = LeaderFirmness.unseating(assessment, ranking);
        assertEquals("First place is shared by \"Two\" and \"One\".", firmness.get(0));
        assertEquals(2, firmness.size());
    }

    @Test
    void theReasonsSayWhichIsBetter() {
        String two = new Reasons(assessment, ranking).of("two");
        String one = new Reasons(assessment, ranking).of("one");
        assertEquals(true, two.contains("ahead of \"One\" in single failures that need"), two);
        assertEquals(true, one.contains("no better in anything than \"Two\""), one);
    }
}

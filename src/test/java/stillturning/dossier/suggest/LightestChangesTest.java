package stillturning.dossier.suggest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import stillturning.assess.front.SearchLimits;
import stillturning.assess.front.SearchWatch;
import stillturning.assess.suggest.LightestMends;
import stillturning.assess.suggest.LightestMends.LightMend;
import stillturning.assess.suggest.Suggestion;
import stillturning.bench.Thorough;
import stillturning.dossier.redrawn.DrawnStep;
import stillturning.dossier.redrawn.Service;
import stillturning.files.ReadStudy;
import stillturning.files.StudyReader;
import stillturning.files.move.Drawn;
import stillturning.files.value.Variation;
import stillturning.model.Candidate;
import stillturning.story.UntoldStory;

/** All single moves of a small candidate, searched and then tried one by one. */
@Thorough
@TestInstance(Lifecycle.PER_CLASS)
class LightestChangesTest {

    private static final double NOTICED = 0.1;

    private LightestChanges changes;
    private LightestFound found;
    private LightestMends mends;
    private final List<Suggestion> everyMove = new ArrayList<>();

    @BeforeAll
    void search() throws Exception {
        StudyReader reader = StudyReader.open(Path.of("architectures", "first-steps"));
        ReadStudy read = reader.study(Variation.NONE);
        changes = new LightestChanges(reader, read);
        Candidate candidate = read.study().orElseThrow().candidate("bus-and-battery").orElseThrow();
        found = changes.of(List.of(candidate), new SearchLimits(1, 400), any -> SearchWatch.NOBODY);
        mends = found.candidates().get(0).mends();
        assertTrue(mends.done().whole());
        Drawn drawn = Drawn.of(reader, read, candidate.id());
        for (DrawnStep step : DrawnStep.all(drawn)) {
            step.taken().ifPresent(after -> tried(drawn, step, after));
        }
    }

    private void tried(Drawn drawn, DrawnStep step, Drawn after) {
        try {
            Service service = Service.of(List.of(drawn));
            var look = Suggest.scrutiny(after);
            if (service.isDoneBy(after.candidate(), look)
                    && service.isQuiet(look)
                    && service.takesOff(look)
                    && service.isOffWhenParked(after.study(), after.candidate())) {
                Asked asked = Asked.oneByOne(mends.wanted());
                everyMove.add(asked.suggestion(after, List.of(step.words()), mends.before(), look));
            }
        } catch (UntoldStory e) {
            // what cannot be computed mends nothing
        }
    }

    private List<Suggestion> mending(String one) {
        return everyMove.stream().filter(s -> s.mended().mended().contains(one)).toList();
    }

    @Test
    void theFirstChoiceBringsFewestTroublesAndIsTheLightestOfThose() {
        int asked = 0;
        for (LightMend mend : mends.mends()) {
            for (String one : mend.first()) {
                Suggestion best =
                        mending(one).stream()
                                .min(
                                        Comparator.<Suggestion>comparingInt(
                                                        s -> s.troubles().size())
                                                .thenComparing(s -> s.after().kilograms())
                                                .thenComparing(s -> s.after().price()))
                                .orElseThrow();
                Suggestion chosen = mend.suggestion();
                assertEquals(best.troubles().size(), chosen.troubles().size(), one);
                assertEquals(best.after().kilograms(), chosen.after().kilograms(), 1e-9, one);
                assertEquals(best.after().price(), chosen.after().price(), 1e-9, one);
                asked++;
            }
        }
        assertTrue(asked > 3, "" + asked);
    }

    @Test
    void whatIsLighterBringsMoreTroublesAndIsToldOnlyWhereItIsNoticed() {
        List<LightMend> lighter =
                mends.mends().stream().filter(m -> !m.lighter().isEmpty()).toList();
        assertFalse(lighter.isEmpty());
        for (LightMend mend : lighter) {
            for (String one : mend.lighter()) {
                Suggestion first =
                        mends.mends().stream()
                                .filter(m -> m.first().contains(one))
                                .findFirst()
                                .orElseThrow()
                                .suggestion();
                Suggestion chosen = mend.suggestion();
                assertTrue(first.after().kilograms() - chosen.after().kilograms() >= NOTICED, one);
                assertTrue(chosen.troubles().size() > first.troubles().size(), one);
            }
        }
    }

    @Test
    void whatIsSaidToBeMendedByNothingIsMendedByNoMove() {
        assertFalse(mends.unmended().isEmpty());
        mends.unmended().forEach(one -> assertEquals(List.of(), mending(one), one));
    }

    @Test
    void toldAgainFromItsDrawingsItClaimsTheSame() throws Exception {
        LightestFound again = changes.again(KeptMends.of(found));
        LightestMends told = again.candidates().get(0).mends();
        assertEquals(mends.done().tally().tried(), told.done().tally().tried());
        assertEquals(mends.unmended(), told.unmended());
        assertEquals(claims(mends), claims(told));
    }

    private static List<String> claims(LightestMends mends) {
        return mends.mends().stream()
                .map(
                        m ->
                                m.first()
                                        + " "
                                        + m.lighter()
                                        + " "
                                        + m.suggestion().values()
                                        + m.suggestion().troubles())
                .toList();
    }
}

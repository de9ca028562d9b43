package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.assess.Assessment;
import stillturning.assess.exchange.EqualBatteries;
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.dossier.MarkedValues;
import stillturning.dossier.SizedCandidates;
import stillturning.report.answer.AnswerBlocks;
import stillturning.report.answer.FirstAnswer;
import stillturning.report.answer.FirstQuestion;

class AnsweringTest {

    private static final String HALF = "bus-and-battery.yaml";

    @TempDir private Path folder;
    private OpenDesk open;
    private Answering answering;

    @BeforeEach
    void assess() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        answering = new Deciding(open.desk(), new OfferedDrawings(open.desk())).answering();
    }

    private void change(String file, String from, String to) {
        String before = open.desk().read().get().fingerprint();
        String text = open.desk().draft().document(file).orElseThrow().text();
        assertTrue(text.contains(from), text);
        assertEquals(
                Optional.empty(),
                open.desk()
                        .attempt(
                                new Change(
                                        "Change",
                                        List.of(
                                                new DraftStep.Replace(
                                                        file, text.replace(from, to))))));
        open.until(() -> !open.desk().read().get().fingerprint().equals(before));
    }

    private boolean says(String words) {
        return answering.blocks().get().toString().contains(words);
    }

    @Test
    void whatTakesLongerIsNotBegunBeforeSomebodyLooks() {
        open.untilAssessed();
        assertTrue(says("was not tried"), answering.blocks().get().toString());
        assertTrue(answering.missing().get());
        assertFalse(answering.working().get());
    }

    @Test
    void theAnswerIsThatOfTheFirstScreenOnceAllIsKnown() {
        answering.watched().set(true);
        open.untilAssessed();
        assertTrue(answering.working().get());
        assertTrue(says("is coming"), answering.blocks().get().toString());

        open.until(() -> !answering.working().get());

        Assessment found = open.desk().results().get().assessment().orElseThrow();
        FirstAnswer expected =
                new FirstQuestion(
                                found,
                                EqualBatteries.of(found, done -> {}),
                                SizedCandidates.ofFirst(found, open.desk().read().get()),
                                Optional.empty(),
                                List.of())
                        .marked(MarkedValues.ofFirstTwo(found, open.desk().read().get()))
                        .answer();
        assertEquals(Optional.of(expected), answering.answer().get());
        assertEquals(AnswerBlocks.of(expected, ""), answering.blocks().get());
        assertFalse(answering.missing().get());
    }

    @Test
    void whatIsGuessedInOneAndMeasuredInTheOtherIsNamed() {
        open.untilAssessed();
        assertTrue(says("guesses in their own files: "), answering.blocks().get().toString());
        assertFalse(says("guessed in "), answering.blocks().get().toString());

        change(HALF, "capacity: 18 Ah (guess)", "capacity: 18 Ah (measured)");
        open.untilAssessed();

        assertTrue(
                says("guessed in the next, known in it: battery capacity"),
                answering.blocks().get().toString());
    }

    @Test
    void calledOffItSaysSoAndCanBeAskedAgain() {
        answering.watched().set(true);
        open.untilAssessed();
        answering.cancel();

        assertTrue(answering.missing().get());
        assertTrue(says("was not tried"), answering.blocks().get().toString());

        answering.ask();
        open.until(() -> !answering.working().get());
        assertFalse(says("was not tried"));
    }

    @Test
    void aChangeMakesItUnknownAgain() {
        answering.watched().set(true);
        open.untilAssessed();
        open.until(() -> !answering.working().get());
        assertFalse(says("is coming"));

        change(HALF, "candidate: ", "candidate: Another ");
        open.untilAssessed();

        assertTrue(says("is coming"), answering.blocks().get().toString());
    }

    @Test
    void aHalfDrawnCandidateIsNamedWithTheReasonAndTheScopeIsSaid() {
        open.untilAssessed();
        assertEquals(List.of(), answering.answer().get().orElseThrow().leftOut());

        change(HALF, "parts:", "parts: [");
        open.until(() -> open.desk().study().filter(s -> s.candidates().size() == 1).isPresent());
        open.untilAssessed();

        FirstAnswer now = answering.answer().get().orElseThrow();
        assertTrue(now.scope().startsWith("1 of 2 candidates"), now.scope());
        assertEquals(HALF, now.leftOut().get(0).candidate());
        assertTrue(now.leftOut().get(0).reason().contains(HALF + ":"), now.leftOut().toString());
    }
}

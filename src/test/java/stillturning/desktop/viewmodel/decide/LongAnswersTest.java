package stillturning.desktop.viewmodel.decide;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.bench.Thorough;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;

class LongAnswersTest {

    @TempDir private Path folder;
    private OpenDesk open;
    private Answering answering;
    private LongAnswers further;

    @BeforeEach
    void assess() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        answering = new Deciding(open.desk(), new OfferedDrawings(open.desk())).answering();
        further = answering.further();
        open.untilAssessed();
    }

    private boolean says(String words) {
        return answering.blocks().get().toString().contains(words);
    }

    @Thorough
    @Test
    void runUpChecksAreCountedOnWish() {
        assertTrue(further.uncounted().get());
        assertFalse(says("before each flight"));

        further.count();
        assertFalse(further.uncounted().get());
        open.until(() -> says("before each flight"));

        assertFalse(further.uncounted().get());
        assertFalse(says("how many run-up checks it needs"));
    }

    @Thorough
    @Test
    void guessesAreTriedOnWishAndWhatToFindOutNextIsSaid() {
        assertTrue(further.untried().get());
        assertTrue(says("guesses that could unseat it"));

        further.tryGuesses();
        assertFalse(further.untried().get());
        open.until(() -> says("What to find out next"));

        assertTrue(says("battery.capacity"), answering.blocks().get().toString());
        assertTrue(says("With all guesses drawn at once, 60 times, it is first in"));
        assertFalse(says("guesses that could unseat it"));
        assertFalse(further.untried().get());
    }

    @Test
    void whatIsCalledOffCanBeAskedAgain() {
        further.tryGuesses();
        further.cancel();
        assertTrue(further.untried().get());
    }
}

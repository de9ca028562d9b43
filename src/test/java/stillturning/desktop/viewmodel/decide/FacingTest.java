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
import stillturning.desktop.draft.Change;
import stillturning.desktop.draft.DraftStep;
import stillturning.desktop.viewmodel.OpenDesk;
import stillturning.desktop.viewmodel.offer.OfferedDrawings;
import stillturning.dossier.PairWork;
import stillturning.model.Study;
import stillturning.report.page.Block;
import stillturning.report.pair.PairBlocks;
import stillturning.report.table.TerminalColour;
import stillturning.report.terminal.BlockText;
import stillturning.story.UntoldStory;

class FacingTest {

    @TempDir private Path folder;
    private OpenDesk open;
    private SideBySide pair;
    private Facing facing;

    @BeforeEach
    void assess() throws IOException {
        open = OpenDesk.over("first-steps", folder);
        Deciding deciding = new Deciding(open.desk(), new OfferedDrawings(open.desk()));
        pair = deciding.sideBySide();
        facing = deciding.facing();
        open.untilAssessed();
    }

    private List<String> expected() throws UntoldStory {
        Study study = open.desk().study().orElseThrow();
        return text(
                new PairBlocks(
                                new PairWork(
                                                study,
                                                study.candidate(pair.one().get()).orElseThrow(),
                                                study.candidate(pair.other().get()).orElseThrow())
                                        .marked(open.desk().read().get())
                                        .done(done -> {}))
                        .all());
    }

    private static List<String> text(List<Block> blocks) {
        return BlockText.lines(blocks, TerminalColour.NONE);
    }

    private void askUntilDone() {
        facing.ask();
        open.until(() -> !facing.working().get());
    }

    @Test
    void onWishTheTwoAreHeldAgainstEachOtherAsOnTheCommandLine() throws UntoldStory {
        assertEquals(List.of(), facing.blocks().get());
        assertTrue(facing.askable().get());
        assertTrue(facing.words().get().startsWith("About "), facing.words().get());

        facing.ask();
        assertTrue(facing.words().get().startsWith("Coming: "), facing.words().get());
        assertFalse(facing.askable().get());
        open.until(() -> !facing.working().get());

        assertEquals(expected(), text(facing.blocks().get()));
        assertEquals("", facing.words().get());
        assertFalse(facing.askable().get());
    }

    @Test
    void eachOrderOfTheTwoIsItsOwnQuestionAndKept() throws UntoldStory {
        askUntilDone();
        List<Block> before = facing.blocks().get();
        pair.swap();
        assertEquals(List.of(), facing.blocks().get());
        pair.swap();
        assertEquals(before, facing.blocks().get());
    }

    @Test
    void aChangeLeavesTheOldWithItsAge() {
        askUntilDone();
        String before = open.desk().read().get().fingerprint();
        String file = pair.one().get() + ".yaml";
        String text = open.desk().draft().document(file).orElseThrow().text();
        assertEquals(
                Optional.empty(),
                open.desk()
                        .attempt(
                                new Change(
                                        "Change",
                                        List.of(
                                                new DraftStep.Replace(
                                                        file,
                                                        text.replace(
                                                                "candidate: ",
                                                                "candidate: Another "))))));
        open.until(() -> !open.desk().read().get().fingerprint().equals(before));
        open.untilAssessed();

        assertFalse(facing.blocks().get().isEmpty());
        assertTrue(
                facing.words().get().startsWith("What stands below is from before"),
                facing.words().get());
        assertTrue(facing.askable().get());
    }

    @Test
    void calledOffNothingIsKnown() {
        facing.ask();
        facing.cancel();
        assertFalse(facing.working().get());
        assertTrue(facing.askable().get());
        assertEquals(List.of(), facing.blocks().get());
    }

    @Test
    void oneAgainstItselfCannotBeAsked() {
        pair.other().set(pair.one().get());
        assertFalse(facing.askable().get());
        assertEquals("Choose two different candidates without mistakes.", facing.words().get());
    }
}

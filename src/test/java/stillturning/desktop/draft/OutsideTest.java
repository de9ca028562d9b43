package stillturning.desktop.draft;

import static java.util.Objects.requireNonNull;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillturning.desktop.draft.Conflict.KeptText;
import stillturning.files.edit.ChangeRefused;

class OutsideTest {

    private static final String ONE_BUS = "one-bus.yaml";

    @TempDir Path folder;
    private Path file;

    @BeforeEach
    void copyAStudy() throws IOException {
        Studies.copy("first-steps", folder);
        file = folder.resolve(ONE_BUS);
    }

    private void outside(String from, String to) throws IOException {
        String text = Files.readString(file);
        assertTrue(text.contains(from));
        Files.writeString(file, text.replace(from, to));
    }

    private static String oneBus(DraftState state) {
        return requireNonNull(state.texts().get(ONE_BUS));
    }

    private static DraftState here(Draft draft, String from, String to) throws ChangeRefused {
        String text = oneBus(draft.state());
        assertTrue(text.contains(from));
        DraftStep step = new DraftStep.Replace(ONE_BUS, text.replace(from, to));
        return draft.make(new Change("Edit", List.of(step)));
    }

    @Test
    void nothingNewIsQuiet() throws Exception {
        Draft draft = Draft.open(folder);
        long revision = draft.state().revision();
        assertTrue(draft.lookOutside().isQuiet());
        assertEquals(revision, draft.state().revision());
    }

    @Test
    void whatOnlyChangedOutsideIsTakenOverAndCanBeTakenBack() throws Exception {
        Draft draft = Draft.open(folder);
        String before = draft.state().texts().get(ONE_BUS);
        outside("18 Ah", "20 Ah");
        assertEquals(List.of(ONE_BUS), draft.lookOutside().takenOver());
        assertTrue(oneBus(draft.state()).contains("20 Ah"));
        assertTrue(draft.state().isSaved());
        DraftState undone = draft.undo();
        assertEquals(before, undone.texts().get(ONE_BUS));
        assertEquals(Set.of(ONE_BUS), undone.unsaved());
        assertTrue(draft.lookOutside().isQuiet());
    }

    @Test
    void changesInLinesThatDoNotTouchAreMerged() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "AWG 8, fuse 40 A", "AWG 6, fuse 40 A");
        outside("18 Ah", "20 Ah");
        assertEquals(List.of(ONE_BUS), draft.lookOutside().merged());
        String text = oneBus(draft.state());
        assertTrue(text.contains("AWG 6, fuse 40 A") && text.contains("20 Ah"), text);
        assertEquals(List.of(), draft.save());
        assertEquals(text, Files.readString(file));
    }

    @Test
    void changesThatTouchWaitForAChoiceAndAreNotSavedBefore() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        outside("18 Ah", "20 Ah");
        List<Conflict> conflicts = draft.lookOutside().conflicts();
        assertEquals(1, conflicts.size());
        assertTrue(conflicts.get(0).mine().orElseThrow().contains("16 Ah"));
        assertTrue(conflicts.get(0).theirs().orElseThrow().contains("20 Ah"));
        assertTrue(conflicts.get(0).base().orElseThrow().contains("18 Ah"));
        assertTrue(draft.lookOutside().isQuiet(), "told once");
        assertEquals(1, draft.save().size());
        assertTrue(Files.readString(file).contains("20 Ah"));

        draft.resolve(conflicts.get(0), KeptText.MINE);

        assertEquals(List.of(), draft.state().conflicts());
        assertEquals(List.of(), draft.save());
        assertTrue(Files.readString(file).contains("16 Ah"));
        assertTrue(Files.readString(folder.resolve(ONE_BUS + "~")).contains("20 Ah"));
    }

    @Test
    void theirsCanBeTakenAndMineHadBackByUndo() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        outside("18 Ah", "20 Ah");
        draft.resolve(draft.lookOutside().conflicts().get(0), KeptText.THEIRS);
        assertTrue(oneBus(draft.state()).contains("20 Ah"));
        assertTrue(draft.state().isSaved());
        assertTrue(oneBus(draft.undo()).contains("16 Ah"));
    }

    @Test
    void theSameChangeOnBothSidesIsNone() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "20 Ah");
        outside("18 Ah", "20 Ah");
        assertTrue(draft.lookOutside().isQuiet());
        assertTrue(draft.state().isSaved());
    }

    @Test
    void aMergeThatCouldNotBeReadIsAConflict() throws Exception {
        Files.writeString(file, "candidate: x\nparts:\n  a: {}\n  b: {}\n  c: {}\n  d: {}\n");
        Draft draft = Draft.open(folder);
        here(draft, "  a: {}\n", "  e: {}\n  a: {}\n");
        outside("  d: {}\n", "  d: {}\n  e: {}\n");
        assertEquals(1, draft.lookOutside().conflicts().size());
    }

    @Test
    void filesThatCameOrWentOutsideComeAndGoHere() throws Exception {
        Draft draft = Draft.open(folder);
        String text = Files.readString(file);
        Files.delete(file);
        Files.writeString(folder.resolve("new.yaml"), text);
        assertEquals(List.of("new.yaml", ONE_BUS), draft.lookOutside().takenOver());
        assertFalse(draft.state().texts().containsKey(ONE_BUS));
        assertEquals(text, draft.state().texts().get("new.yaml"));
        assertTrue(draft.undo().texts().containsKey(ONE_BUS));
    }

    @Test
    void aFileThatWentWhileItWasEditedWaitsForAChoice() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        Files.delete(file);
        Conflict conflict = draft.lookOutside().conflicts().get(0);
        assertEquals(Optional.empty(), conflict.theirs());
        draft.resolve(conflict, KeptText.MINE);
        assertEquals(List.of(), draft.save());
        assertTrue(Files.readString(file).contains("16 Ah"));
    }

    @Test
    void theStudysFileIsNeverTakenAway() throws Exception {
        Draft draft = Draft.open(folder);
        Files.delete(folder.resolve("study.yaml"));
        assertEquals(1, draft.lookOutside().problems().size());
        assertEquals(Set.of("study.yaml"), draft.state().unsaved());
        assertEquals(List.of(), draft.save());
        assertTrue(Files.exists(folder.resolve("study.yaml")));
    }

    @Test
    void aFolderThatIsGoneTakesNothingAway() throws Exception {
        Path moved = folder.resolveSibling(folder.getFileName() + "-moved");
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        Files.move(folder, moved);
        try {
            assertEquals(1, draft.lookOutside().problems().size());
            assertFalse(draft.save().isEmpty());
            assertEquals(3, draft.state().texts().size());
            assertEquals(Set.of(ONE_BUS), draft.state().unsaved());
        } finally {
            Files.move(moved, folder);
        }
        assertEquals(List.of(), draft.save());
        assertEquals(List.of(), draft.state().problems());
    }

    @Test
    void savingFindsWhatWasChangedSinceTheLastLook() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        outside("18 Ah", "20 Ah");
        assertEquals(1, draft.save().size());
        assertEquals(1, draft.state().conflicts().size());
        assertTrue(Files.readString(file).contains("20 Ah"));
    }

    @Test
    void keepingMineInOnePlacePutsNoOtherLineBack() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        outside("18 Ah", "20 Ah");
        outside("AWG 8, fuse 40 A", "AWG 6, fuse 40 A");
        Conflict conflict = draft.lookOutside().conflicts().get(0);
        assertEquals(1, conflict.disputes().size());
        assertTrue(conflict.disputes().get(0).mine().contains("16 Ah"));
        assertTrue(conflict.disputes().get(0).theirs().contains("20 Ah"));
        draft.resolve(conflict, KeptText.MINE);
        assertEquals(List.of(), draft.save());
        String text = Files.readString(file);
        assertTrue(text.contains("16 Ah") && text.contains("AWG 6, fuse 40 A"), text);
    }

    @Test
    void eachPlaceHasAChoiceOfItsOwn() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        here(draft, "AWG 8, fuse 40 A", "AWG 4, fuse 40 A");
        outside("18 Ah", "20 Ah");
        outside("AWG 8, fuse 40 A", "AWG 6, fuse 40 A");
        Conflict conflict = draft.lookOutside().conflicts().get(0);
        assertEquals(2, conflict.disputes().size());
        draft.resolve(conflict, List.of(KeptText.THEIRS, KeptText.MINE));
        String text = oneBus(draft.state());
        assertTrue(text.contains("20 Ah") && text.contains("AWG 4, fuse 40 A"), text);
        assertEquals(List.of(), draft.state().conflicts());
    }

    @Test
    void whatIsEditedMeanwhileIsAskedAboutAnew() throws Exception {
        Draft draft = Draft.open(folder);
        here(draft, "18 Ah", "16 Ah");
        outside("18 Ah", "20 Ah");
        Conflict conflict = draft.lookOutside().conflicts().get(0);
        here(draft, "16 Ah", "15 Ah");
        draft.resolve(conflict, List.of(KeptText.THEIRS));
        Conflict now = draft.state().conflicts().get(0);
        assertTrue(now.disputes().get(0).mine().contains("15 Ah"));
        draft.resolve(now, List.of(KeptText.MINE));
        assertTrue(oneBus(draft.state()).contains("15 Ah"));
    }

    @Test
    void whatAnInterruptedSaveLeftIsClearedAtTheNextOpening() throws Exception {
        long gone = new ProcessBuilder("true").start().pid();
        while (ProcessHandle.of(gone).isPresent()) {
            Thread.sleep(10);
        }
        Path left = folder.resolve("." + ONE_BUS + "." + gone + "-1.new");
        Files.writeString(left, "half a text");
        Path own = folder.resolve("." + ONE_BUS + "." + ProcessHandle.current().pid() + "-9.new");
        Files.writeString(own, "being written");
        Draft.open(folder);
        assertFalse(Files.exists(left));
        assertTrue(Files.exists(own));
    }
}
